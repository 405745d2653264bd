using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Explaining;

/// <summary>
/// Explains a plan that leaves loads dark. It asks the planner and the rules and nothing else, so that every word of it has
/// been tried: a set of loads is planned alone, a change is planned again.
/// </summary>
public static class PlanExplainer
{
    /// <summary>
    /// Explains what stands in the way of the loads that a plan does not feed; of one that feeds all but leaves less free
    /// than the headroom, which headroom would do.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How it was planned; its time limit holds for all questions asked on the way together.</param>
    /// <param name="cancellation">Stops asking; what was found so far is returned.</param>
    public static PlanExplanation Explain(PlanResult plan, PlanOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);

        // The planned wiring itself must not bind: only pinned feeds do.
        var pinned = new ValueList<Feed>([.. (plan.Rig.Wired ?? []).Items.Where(static feed => feed.Pinned)]);
        var trials = new RigTrials(plan.Rig with { Wired = pinned }, options, TimeProvider.System, cancellation);
        if (plan.Unfed.Count == 0)
            return PlanExplanation.None with { Changes = [.. Headrooms(plan, trials)] };
        var dark = plan.Unfed.Items.Select(id => new DarkLoad(id, MissingOutlet.For(trials.LoadOf(id), trials.Rig.HeadroomInForce).Text));
        return new PlanExplanation([.. new ReasonFinder(plan, trials).Find()], [.. dark], [.. new MendFinder(plan, trials).Find()]);
    }

    /// <summary>The largest headroom, in whole percents, with which no limit is past it.</summary>
    private static IEnumerable<PlanChange> Headrooms(PlanResult plan, RigTrials trials)
    {
        if (!plan.Check.Findings.Items.Any(static finding => finding.Rule == RuleId.ThinHeadroom))
            yield break;

        var (fits, tooMuch) = (-1, (int)Math.Ceiling(trials.Rig.HeadroomInForce * 100));
        while (tooMuch - fits > 1 && !trials.IsOver)
        {
            var middle = fits < 0 ? 0 : (fits + tooMuch) / 2;
            var tried = trials.Plan(trials.Rig with { Headroom = middle / 100m });
            var isFine = tried.Unfed.Count == 0 && !tried.Check.Findings.Items.Any(static finding => finding.Rule == RuleId.ThinHeadroom);
            if (!isFine && middle == 0)
                yield break;
            (fits, tooMuch) = isFine ? (middle, tooMuch) : (fits, middle);
        }

        if (fits >= 0)
            yield return new PlanChange($"set headroom to {fits} %: then no limit is past it", trials.Rig with { Headroom = fits / 100m });
    }
}
