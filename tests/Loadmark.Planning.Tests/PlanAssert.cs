using Loadmark.Core.Checks;

namespace Loadmark.Planning.Tests;

internal static class PlanAssert
{
    private static readonly RuleId[] Joining = [RuleId.GroundShort, RuleId.AcShared, RuleId.SeriesShort, RuleId.ParallelUnequal];

    /// <summary>
    /// The rules refuse nothing but unfed loads, and supplies for other mains, which stay idle; and of what a plan joins they do not doubt
    /// that it is harmless.
    /// </summary>
    public static void IsSafe(PlanResult plan)
    {
        foreach (var finding in plan.Check.Findings.Items.Where(finding => finding.Severity >= Severity.Fails))
        {
            if (finding.Rule == RuleId.MainsMismatch)
                Assert.DoesNotContain(plan.Rig.Wired!.Value.Items, feed => feed.From.Items.Any(outlet => outlet.Supply == finding.Subjects[0]));
            else
                Assert.True(finding.Rule == RuleId.Unfed, $"{finding.Rule}: {finding.Message} {finding.Working}");
        }

        Assert.DoesNotContain(plan.Check.Findings.Items, static finding => finding.Severity == Severity.Unsure && Joining.Contains(finding.Rule));
    }
}
