using Loadmark.Core.Checks;

namespace Loadmark.Core.Tests.Trials;

/// <summary>Findings counted by severity, by a way of its own, to judge the trials with.</summary>
internal static class Severities
{
    /// <summary>Whether one check is better than another: fewer of the worst severity in which they differ. Notes do not count.</summary>
    public static bool IsBetter(CheckResult one, CheckResult other)
    {
        foreach (var severity in new[] { Severity.Harm, Severity.Fails, Severity.Unsure, Severity.Noise, Severity.Margin })
        {
            var (of, than) = (Count(one, severity), Count(other, severity));
            if (of != than)
                return of < than;
        }

        return false;
    }

    /// <summary>The findings that stop a rig: of harm, or of what will not run.</summary>
    public static IEnumerable<Finding> Refusing(this CheckResult check) => check.Findings.Where(static finding => finding.Severity >= Severity.Fails);

    private static int Count(CheckResult check, Severity severity) => check.Findings.Count(finding => finding.Severity == severity);
}
