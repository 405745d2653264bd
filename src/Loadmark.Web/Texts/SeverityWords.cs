using Loadmark.Core.Checks;

namespace Loadmark.Web.Texts;

/// <summary>How severities are shown on the page: a word, a sign and a class, never a colour alone.</summary>
public static class SeverityWords
{
    /// <summary>The word for a severity.</summary>
    public static string Word(this Severity severity) => severity.ToString();

    /// <summary>The class that gives sign and colour.</summary>
    public static string Class(this Severity severity) => $"sev-{severity.ToString().ToLowerInvariant()}";
}
