using Loadmark.Core.Checks;

namespace Loadmark.Core.Trials;

/// <summary>Compares checks by how many findings of each severity they have, the worst severity first.</summary>
public static class SeverityCounts
{
    /// <summary>Counts of findings: harm, fails, unsure, noise, margin. Tuples compare item by item.</summary>
    /// <param name="check">What the rules say.</param>
    public static (int Harm, int Fails, int Unsure, int Noise, int Margin) Of(CheckResult check)
    {
        Span<int> counts = stackalloc int[(int)Severity.Harm + 1];
        foreach (var finding in check.Findings)
            counts[(int)finding.Severity]++;
        return (
            counts[(int)Severity.Harm],
            counts[(int)Severity.Fails],
            counts[(int)Severity.Unsure],
            counts[(int)Severity.Noise],
            counts[(int)Severity.Margin]);
    }
}
