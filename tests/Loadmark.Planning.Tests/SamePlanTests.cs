using Loadmark.Core.Rigs;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle.Fleet;

namespace Loadmark.Planning.Tests;

/// <summary>
/// A wiring is improved on one thread while another proves bounds: whichever is the quicker, the same rig gives the same plan.
/// Planning several rigs at once shuffles who is.
/// </summary>
public sealed class SamePlanTests
{
    /// <summary>Rigs that the relaxation alone does not settle, so that both threads are at work.</summary>
    private static readonly int[] Seeds = [3, 5, 6, 8, 10, 13, 14, 19];

    [Fact]
    public void The_same_rig_gives_the_same_plan_however_busy_the_machine_is()
    {
        var first = Seeds.Select(Plan).ToList();
        var again = new PlanResult[Seeds.Length * 3];
        Parallel.For(0, again.Length, new ParallelOptions { MaxDegreeOfParallelism = 6 }, place => again[place] = Plan(Seeds[place % Seeds.Length]));

        for (var place = 0; place < again.Length; place++)
        {
            var expected = first[place % Seeds.Length];
            Assert.Equal(expected.Rig.Wired, again[place].Rig.Wired);
            Assert.Equal(expected.Objective, again[place].Objective);
            Assert.Equal(expected.Status, again[place].Status);
        }

        static PlanResult Plan(int seed) => RigPlanner.Plan(RigOf(seed), new PlanOptions { TimeLimit = TimeSpan.FromMinutes(2) });
    }

    private static Rig RigOf(int seed) => Rigs.Read(new FleetRig(seed, 20, seed % 2 == 0).ToString());
}
