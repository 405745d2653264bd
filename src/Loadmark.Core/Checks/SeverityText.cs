namespace Loadmark.Core.Checks;

/// <summary>What severities mean, in words.</summary>
public static class SeverityText
{
    /// <summary>What it means as the verdict on a rig, in a sentence.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is no severity.</exception>
    public static string Sentence(this Severity verdict) => verdict switch
    {
        Severity.Harm => "Do not plug in: something here can damage gear or hurt someone.",
        Severity.Fails => "Do not rely on it: something here will not run, or not for long.",
        Severity.Noise => "It runs, but something here may hum or whine.",
        Severity.Margin => "It works, with little to spare, or only if an assumption holds.",
        Severity.Note => "Nothing stands against it; something is worth knowing.",
        Severity.Good => "Nothing was found against it.",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "It has no meaning."),
    };
}
