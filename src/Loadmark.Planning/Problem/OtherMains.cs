using Loadmark.Core.Checks;

namespace Loadmark.Planning.Problem;

/// <summary>Which supplies the mains of a rig would harm, or would not do for: they feed nothing.</summary>
internal static class OtherMains
{
    /// <summary>The findings that say so, each with the supply as its first subject.</summary>
    /// <param name="check">What the rules say of the rig.</param>
    public static IEnumerable<Finding> In(CheckResult check) =>
        check.Findings.Items.Where(static finding => finding.Rule == RuleId.MainsMismatch && finding.Severity >= Severity.Fails);
}
