using Loadmark.Core.Checks;

namespace Loadmark.Web.Bench;

/// <summary>How severities are shown on the page: a word, a sign and a class, never a colour alone.</summary>
public static class SeverityWords
{
    /// <summary>The word.</summary>
    public static string Word(this Severity severity) => severity.ToString();

    /// <summary>The class that gives sign and colour.</summary>
    public static string Class(this Severity severity) => $"sev-{severity.ToString().ToLowerInvariant()}";

    /// <summary>The verdict as a sentence for a player.</summary>
    public static string Sentence(this Severity verdict) => verdict switch
    {
        Severity.Harm => "Do not plug in: something here can damage gear or hurt someone.",
        Severity.Fails => "Do not rely on it: something here will not run, or not for long.",
        Severity.Noise => "It runs, but something here may hum or whine.",
        Severity.Margin => "It works, with little to spare, or only if an assumption holds.",
        Severity.Note => "Nothing stands against it; something is worth knowing.",
        _ => "Nothing was found against it.",
    };
}
