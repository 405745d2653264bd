using Loadmark.Core.Checks;
using Spectre.Console;

namespace Loadmark.Sheets;

/// <summary>How a severity shows: a sign, a word and a colour, each telling it apart alone.</summary>
/// <param name="Sign">The sign, one cell wide.</param>
/// <param name="AsciiSign">The sign where only ASCII can be shown.</param>
/// <param name="Word">The word, in lower case.</param>
/// <param name="Style">The colour.</param>
/// <param name="Meaning">What it means as the verdict on a rig, in a sentence.</param>
internal sealed record SeverityLook(string Sign, string AsciiSign, string Word, Style Style, string Meaning)
{
    /// <summary>The severities from worst to best.</summary>
    public static ReadOnlySpan<Severity> WorstFirst =>
        [Severity.Harm, Severity.Fails, Severity.Noise, Severity.Margin, Severity.Note, Severity.Good];

    /// <summary>How <paramref name="severity"/> shows.</summary>
    public static SeverityLook Of(Severity severity) => severity switch
    {
        Severity.Harm => new("✖", "X", "harm", Ink.Vermilion, "Do not plug in: something here can damage gear or hurt someone."),
        Severity.Fails => new("■", "#", "fails", Ink.Orange, "Do not rely on it: something here will not run, or not for long."),
        Severity.Noise => new("≈", "~", "noise", Ink.Purple, "It runs, but something here may hum or whine."),
        Severity.Margin => new("△", "!", "margin", Ink.Blue, "It works, with little to spare, or only if an assumption holds."),
        Severity.Note => new("•", "-", "note", Ink.Plain, "Nothing stands against it; something is worth knowing."),
        Severity.Good => new("✔", "+", "good", Ink.Green, "Nothing was found against it."),
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "It has no look."),
    };

    /// <summary>The sign as far as the sheet can show it.</summary>
    public string SignOn(Sheet sheet) => sheet.Unicode ? Sign : AsciiSign;
}
