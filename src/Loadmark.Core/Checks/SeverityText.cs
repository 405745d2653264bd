namespace Loadmark.Core.Checks;

/// <summary>What severities mean, in words.</summary>
public static class SeverityText
{
    /// <summary>What a severity means as the verdict on a rig, in a sentence.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is no severity.</exception>
    public static string Sentence(this Severity verdict) => verdict switch
    {
        Severity.Harm => "Do not plug in: something here can damage gear or hurt someone.",
        Severity.Fails => "Something here will not run, or not for long.",
        Severity.Open => "Nothing is plugged in yet.",
        Severity.Unsure => "Find out first: something that is not known here could mean harm.",
        Severity.Noise => "It runs, but something here may hum or whine.",
        Severity.Margin => "Close to a limit, or something that is not known could keep it from running.",
        Severity.Note => "Nothing stands against it; something is worth knowing.",
        Severity.Good => "Nothing was found against it.",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "It has no meaning."),
    };
}
