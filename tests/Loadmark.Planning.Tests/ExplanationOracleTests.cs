using Loadmark.Core.Rigs;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests;

/// <summary>
/// Explanations of random rigs that cannot be fed, judged by trying every wiring by the rules alone: each set of loads that is named
/// cannot be fed even alone and none of it is named in vain, and each change that is proposed, made from its words, mends it all.
/// </summary>
public sealed class ExplanationOracleTests(ITestOutputHelper output)
{
    private static readonly int Rigs = Rounds.Of(180);

    [Fact]
    public void Every_set_named_fails_alone_and_every_change_works()
    {
        var (reasons, sets, others, changes, together, rigs, unmended) = (0, 0, 0, 0, 0, 0, 0);
        var kinds = new List<string>();
        for (var seed = 10_001; rigs < Rigs; seed++)
        {
            var text = new RandomRig(seed, mostLoads: 6).Write();
            var rig = Tests.Rigs.Read(text);
            var plan = RigPlanner.Plan(rig, new PlanOptions(), TestContext.Current.CancellationToken);
            if (plan.Unfed.Count == 0)
                continue;

            rigs++;
            var explanation = PlanExplainer.Explain(plan, new PlanOptions(), TestContext.Current.CancellationToken);
            var explained = explanation.Reasons.Items.SelectMany(static reason => reason.Loads.Items.Concat(reason.AlsoDark.Items)).ToList();
            Assert.True(plan.Unfed.Items.All(explained.Contains), $"seed {seed}: no reason for one of {plan.Unfed}\n{text}");
            Assert.Equal(plan.Unfed.Items, explanation.Dark.Items.Select(static dark => dark.Load));
            unmended += explanation.Changes.Count == 0 ? 1 : 0;
            foreach (var reason in explanation.Reasons)
            {
                reasons++;
                var core = rig with { Loads = [.. rig.Loads.Items.Where(load => reason.Loads.Items.Contains(load.Id))] };
                Assert.False(FeedsAll(core), $"seed {seed}: {string.Join(", ", reason.Loads)} can be fed alone\n{text}");
                foreach (var other in reason.AlsoDark)
                {
                    others++;
                    var replaced = reason.Loads.Items.Last(plan.Unfed.Items.Contains);
                    var instead = rig with { Loads = [.. rig.Loads.Items.Where(load => load.Id == other || (load.Id != replaced && reason.Loads.Items.Contains(load.Id)))] };
                    Assert.False(FeedsAll(instead), $"seed {seed}: {other} can be fed in the place of {replaced}: {reason.Because}\n{text}");
                }

                if (reason.Loads.Count == 1)
                    continue;
                sets++;
                foreach (var load in reason.Loads)
                {
                    var less = core with { Loads = [.. core.Loads.Items.Where(other => other.Id != load)] };
                    Assert.True(FeedsAll(less), $"seed {seed}: {load} has nothing to do with {string.Join(", ", reason.Loads)}\n{text}");
                }
            }

            foreach (var change in explanation.Changes.Items.Select(static change => change.Text))
            {
                changes++;
                var added = ChangeReader.CountOf(change);
                together += added > 1 && change.Contains("lead", StringComparison.Ordinal) ? 1 : 0;
                kinds.Add(added switch { 0 => "take off", 1 => string.Join(' ', change.Split(' ').Take(3)), _ => $"{added} together" });
                var mended = ChangeReader.Make(rig, change);
                Assert.True(mended is not null, $"seed {seed}: nobody understands \"{change}\"");
                Assert.True(FeedsAll(mended), $"seed {seed}: {change} does not mend it\n{text}");
            }
        }

        output.WriteLine($"{rigs} rigs that cannot be fed: {reasons} reasons, {sets} of them of several loads, {others} dark loads beside them; {changes} changes ({string.Join(", ", kinds.CountBy(static kind => kind).Select(static kind => $"{kind.Key} {kind.Value}"))}); {unmended} rigs without a change");
        Assert.True(others > 5);
        Assert.True(together > 5);
        Assert.True(sets > 8);
        Assert.True(changes > Rigs);
    }

    private static bool FeedsAll(Rig rig) => new BruteForce(rig).FeedsAll();
}
