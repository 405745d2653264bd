namespace Loadmark.Storage.Entities;

/// <summary>A count that goes up with each change of something.</summary>
internal sealed class CountRow
{
    /// <summary>The count of changes of the gear library.</summary>
    public const string Gear = "gear";

    public string Name { get; set; } = "";

    public long Value { get; set; }
}
