using Loadmark.Core.Checks;

namespace Loadmark.Planning.Tests;

internal static class PlanAssert
{
    /// <summary>The rules refuse nothing but unfed loads, and supplies for other mains, which stay idle.</summary>
    public static void IsSafe(PlanResult plan)
    {
        foreach (var finding in plan.Check.Findings.Items.Where(finding => finding.Severity >= Severity.Fails))
        {
            if (finding.Rule == "mains-mismatch")
                Assert.DoesNotContain(plan.Rig.Wired!.Value.Items, feed => feed.From.Items.Any(outlet => outlet.Supply == finding.Subjects[0]));
            else
                Assert.True(finding.Rule == "unfed", $"{finding.Rule}: {finding.Message} {finding.Working}");
        }
    }
}
