using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Search;

/// <summary>A planned wiring as the rules see it.</summary>
/// <param name="Wired">The rig with the wiring, looked up.</param>
/// <param name="Check">What the rules say.</param>
/// <param name="Levels">The levels of the objective, measured by the rules.</param>
/// <param name="Gaps">For each level how far it may be from the best, in the model's whole units; null, or none, when nothing is
/// proven.</param>
internal sealed record Candidate(WiredRig Wired, CheckResult Check, decimal[] Levels, long?[] Gaps)
{
    /// <summary>
    /// Whether no rule refuses it, nor what it joins may harm, but for loads that are not fed and supplies that it leaves alone.
    /// </summary>
    public bool IsSafe => !Check.Findings.Items.Any(Refuses);

    /// <summary>The rules on what is joined by a lead, or meets on a return.</summary>
    private static RuleId[] Joining { get; } = [RuleId.GroundShort, RuleId.AcShared, RuleId.SeriesShort, RuleId.ParallelUnequal];

    /// <summary>Whether nothing is better.</summary>
    public bool IsProven => Gaps.Length > 0 && Gaps.All(static gap => gap == 0);

    /// <summary>How many loads are not fed.</summary>
    public int Unfed => (int)Levels[(int)Level.Unfed];

    /// <summary>Judges a wiring.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feeds">The wiring.</param>
    /// <param name="gaps">How far each level may be from the best.</param>
    /// <param name="options">
    /// How it was planned; null for as it is by default. Where the search feeds inputs of supplies as loads are, the wiring is judged as
    /// the search sees it, where no such supply joins returns: that is never worse than what the rules say of the rig itself.
    /// </param>
    public static Candidate Of(Rig rig, ValueList<Feed> feeds, long?[] gaps, PlanOptions? options = null)
    {
        var planned = rig with { Wired = feeds };
        var inputs = options?.Inputs ?? PlannedInputs.None;
        var wired = inputs.Supplies.Count > 0 ? WiredRig.WithInputsApart(planned, inputs.Supplies) : WiredRig.Of(planned);
        var check = NameplateCheck.Of(wired);
        var levels = Enum.GetValues<Level>().Select(level => LevelMeter.Measure(level, wired, check, inputs, options?.Present));
        return new Candidate(wired, check, [.. levels], gaps);
    }

    /// <summary>
    /// Whether a finding refuses a plan. That loads are dark is counted, and a supply for other mains is left alone. What joins outlets or
    /// returns must be known to be safe; that a load is on what is not known to suit it is counted.
    /// </summary>
    /// <param name="finding">The finding.</param>
    public static bool Refuses(Finding finding) => finding.Severity switch
    {
        >= Severity.Fails => finding.Rule != RuleId.Unfed && finding.Rule != RuleId.MainsMismatch,
        Severity.Unsure => Joining.Contains(finding.Rule),
        _ => false,
    };

    /// <summary>The candidate's levels in the model's whole units.</summary>
    public long[] Units() => [.. Enum.GetValues<Level>().Select(level => LevelMeter.Units(level, Levels[(int)level]))];

    /// <summary>Whether the candidate is better than another: lower on the first level that differs.</summary>
    public bool IsBetterThan(Candidate other)
    {
        for (var level = 0; level < Levels.Length; level++)
        {
            if (Levels[level] != other.Levels[level])
                return Levels[level] < other.Levels[level];
        }

        return false;
    }
}
