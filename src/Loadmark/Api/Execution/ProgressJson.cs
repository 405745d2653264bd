using Loadmark.Planning.Buying;
using Loadmark.Planning.Objective;
using Loadmark.Shapes;
using Loadmark.Simulation.Spreading;
using Loadmark.Workshop.Library;

namespace Loadmark.Api.Execution;

/// <summary>How far a computation has come as JSON.</summary>
internal static class ProgressJson
{
    /// <summary>The shape of progress.</summary>
    public static JsonShape<ReportedProgress> Progress { get; } = new JsonShape<ReportedProgress>(
            "Progress",
            "How far a computation has come. Beside the seconds: of a plan level, value and bound; of a purchase leastPrice, found and "
            + "planned; of samples done and samples; of rigs that a change of gear means something to done and rigs.")
        .Figure("seconds", static told => Math.Round((decimal)told.Elapsed.TotalSeconds, 3), "Time since it was asked for, s.")
        .Text("level", static told => (told.Last as PlanProgress)?.Level, "What is being made least.", Presence.OrAbsent)
        .Figure("value", static told => (told.Last as PlanProgress)?.Value, "What the best so far has.", Presence.OrAbsent)
        .Figure("bound", static told => (told.Last as PlanProgress)?.Bound, "What no wiring is below.", Presence.OrAbsent)
        .Figure(
            "leastPrice", static told => (told.Last as BuyProgress)?.LeastPrice,
            "What nothing that feeds all costs less than; at the end, nothing that is quiet besides.",
            Presence.OrAbsent)
        .Count("found", static told => (told.Last as BuyProgress)?.Found, "Options found.", Presence.OrAbsent)
        .When(static told => told.Last is BuyProgress, static members => members
            .Count(
                "planned", static told => (told.Last as BuyProgress)?.Planned, "Options wired; null while they are looked for.",
                Presence.OrNull))
        .Count(
            "done", static told => (told.Last as SpreadProgress)?.Done ?? (told.Last as AffectedProgress)?.Done,
            "Samples computed, or rigs looked at.", Presence.OrAbsent)
        .Count("samples", static told => (told.Last as SpreadProgress)?.Samples, "Samples asked for.", Presence.OrAbsent)
        .Count("rigs", static told => (told.Last as AffectedProgress)?.Rigs, "Rigs to look at.", Presence.OrAbsent);
}
