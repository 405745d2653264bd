namespace Loadmark.Core.Checks;

/// <summary>The worst finding that arises at each thing of a rig: what it is marked with, in the diagram and in lists.</summary>
public static class WorstBySubject
{
    /// <summary>The severities by the id that findings name things by; without notes, which mark nothing.</summary>
    /// <param name="check">What the rules say of the rig.</param>
    public static IReadOnlyDictionary<string, Severity> Of(CheckResult check)
    {
        ArgumentNullException.ThrowIfNull(check);
        var worst = new Dictionary<string, Severity>(StringComparer.Ordinal);

        // The findings come worst first.
        foreach (var finding in check.Findings.Items.Where(static finding => finding.Severity > Severity.Note))
        {
            foreach (var subject in finding.Arises)
                worst.TryAdd(subject, finding.Severity);
        }

        return worst;
    }
}
