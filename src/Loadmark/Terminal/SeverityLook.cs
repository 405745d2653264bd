using Loadmark.Core.Checks;
using Spectre.Console;

namespace Loadmark.Terminal;

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
        [Severity.Harm, Severity.Fails, Severity.Open, Severity.Unsure, Severity.Noise, Severity.Margin, Severity.Note, Severity.Good];

    /// <summary>How <paramref name="severity"/> shows.</summary>
    public static SeverityLook Of(Severity severity) => severity switch
    {
        Severity.Harm => new("✖", "X", "harm", SheetStyle.Vermilion, severity.Sentence()),
        Severity.Fails => new("■", "#", "fails", SheetStyle.Orange, severity.Sentence()),
        Severity.Open => new("□", "o", "open", SheetStyle.Plain, severity.Sentence()),
        Severity.Unsure => new("?", "?", "unsure", SheetStyle.Olive, severity.Sentence()),
        Severity.Noise => new("≈", "~", "noise", SheetStyle.Purple, severity.Sentence()),
        Severity.Margin => new("△", "!", "margin", SheetStyle.Blue, severity.Sentence()),
        Severity.Note => new("•", "-", "note", SheetStyle.Plain, severity.Sentence()),
        Severity.Good => new("✔", "+", "good", SheetStyle.Green, severity.Sentence()),
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "It has no look."),
    };

    /// <summary>The sign as far as the sheet can show it.</summary>
    public string SignOn(Sheet sheet) => sheet.Unicode ? Sign : AsciiSign;
}
