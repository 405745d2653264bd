using Loadmark.Core.Checks;

namespace Loadmark.Web.Bench;

/// <summary>The worst finding about each thing of a rig.</summary>
internal static class WorstBySubject
{
    /// <summary>The severities by the id that findings name things by; without notes, which mark nothing.</summary>
    public static IReadOnlyDictionary<string, Severity> Of(CheckResult check)
    {
        var worst = new Dictionary<string, Severity>(StringComparer.Ordinal);
        foreach (var finding in check.Findings.Items.Where(static finding => finding.Severity > Severity.Note))
        {
            foreach (var subject in finding.Subjects)
                worst.TryAdd(subject, finding.Severity);
        }

        return worst;
    }
}
