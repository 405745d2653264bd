namespace Loadmark.Core.Display;

/// <summary>How what nobody has yet is marked wherever it is named.</summary>
public static class ToBuyMark
{
    /// <summary>The mark.</summary>
    public const string Words = "to buy";

    /// <summary>A name with the mark where it takes one: "more/1 (to buy)".</summary>
    /// <param name="name">The name.</param>
    /// <param name="isToBuy">Whether it is of something that is yet to be bought.</param>
    public static string On(string name, bool isToBuy) => isToBuy ? $"{name} ({Words})" : name;
}
