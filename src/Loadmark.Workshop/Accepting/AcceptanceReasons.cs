using Loadmark.Core.Acceptance;
using Loadmark.Core.Checks;

namespace Loadmark.Workshop.Accepting;

/// <summary>Why a rig is not accepted, in sentences.</summary>
internal static class AcceptanceReasons
{
    /// <summary>The reasons, the worst first; none where the rig is accepted.</summary>
    public static List<string> Of(AcceptancePlan plan, BenchSession session, IReadOnlyList<JudgedMeasure> measures)
    {
        var reasons = new List<string>();
        reasons.AddRange(measures.Where(static one => one.Judged == Conformity.Fail)
            .Select(static one => $"{one.Point.Plug.Load.Id} at {one.Point.Name}, {MeasureText.Of(one.Measure)}: {one.Means}"));
        if (plan.Check.Verdict >= Severity.Unsure)
            reasons.Add(
                $"The drawing itself does not hold: {VerdictSentence.Of(plan.Check)} "
                + "What was measured and settles it goes into the rig file.");
        if (session.RigVersion is { } version && version != plan.Version)
            reasons.Add(
                $"These readings are of version {version} of the rig, and it is {plan.Version} now: measure what was changed anew.");
        if (plan.Points.Count == 0)
            reasons.Add("Nothing is wired, so that there is nothing to measure.");
        AddCount(reasons, [.. measures.Where(static one => one.Judged == Conformity.NotSure)], "The reading does not tell");
        AddCount(
            reasons, [.. measures.Where(static one => one is { IsNeeded: true, Judged: null })],
            "Not measured yet");
        return reasons;
    }

    private static void AddCount(List<string> reasons, List<JudgedMeasure> measures, string what)
    {
        foreach (var measure in measures.GroupBy(static one => one.Measure))
        {
            var names = Phrases.List([.. measure.Select(static one => one.Point.Plug.Load.Id)]);
            reasons.Add($"{what}, {MeasureText.Of(measure.Key)}: {names}.");
        }
    }
}
