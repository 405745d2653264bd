namespace Loadmark.Core.OpenQuestions;

/// <summary>A voltage that labels commonly print, offered as an answer where nothing tells the voltage.</summary>
/// <param name="Text">The voltage as a label prints it: <c>9 V DC</c>.</param>
/// <param name="Words">The voltage in the words of the answers: <c>9 V d.c.</c>.</param>
internal sealed record CommonVoltage(string Text, string Words)
{
    /// <summary>The most common first (common practice, no source).</summary>
    public static IReadOnlyList<CommonVoltage> All { get; } =
        [new("9 V DC", "9 V d.c."), new("12 V DC", "12 V d.c."), new("18 V DC", "18 V d.c."), new("9 V AC", "9 V a.c.")];
}
