using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Objective;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>The answer to a plan as JSON.</summary>
internal static class PlanJson
{
    private static JsonShape<WiredFeed> Feed { get; } = new JsonShape<WiredFeed>("PlannedFeed", "One feed.")
        .Texts("from", static feed => feed.Outlets.Select(static outlet => outlet.Name), "The outlets, as supply/outlet.")
        .Word(
            "joined", static feed => JsonWords.Of(feed.Joined), JsonWords.Joints,
            "How several outlets are joined; null for one outlet.", Presence.OrNull)
        .Figure(
            "volts", static feed => feed.Volts?.Value, "The voltage that the outlets are set to, V; null where it is not known.",
            Presence.OrNull)
        .Text("lead", static feed => feed.Feed.Lead ?? "straight", "The lead; straight for a plain one.")
        .Texts("to", static feed => feed.Feed.To, "The loads.");

    private static JsonShape<Reason> Reason { get; } = new JsonShape<Reason>("Reason", "Demands that cannot hold together.")
        .Texts("loads", static reason => reason.Loads, "The loads.")
        .Text("because", static reason => reason.Because, "Why.")
        .Texts(
            "alsoDark", static reason => reason.AlsoDark,
            "Further dark loads, each of which cannot be fed either in the place of the last dark one of the loads.");

    private static JsonShape<DarkLoad> Lack { get; } = new JsonShape<DarkLoad>("Lack", "What a load that stays dark lacks.")
        .Text("load", static dark => dark.Load, "The load.")
        .Text("outlet", static dark => dark.Outlet, "The outlet that would do for it, with the rig's headroom, such as 9 V 300 mA.");

    private static JsonShape<LoadMove> Move { get; } = new JsonShape<LoadMove>("Move", "A load that is to be plugged in otherwise.")
        .Text("load", static move => move.Load, "The load.")
        .Texts(
            "from", static move => move.Before.Items.Select(LoadMove.PlaceOf),
            "Where it is plugged in now, with setting and lead; empty where it is not.")
        .Text(
            "to", static move => move.After is { } after ? LoadMove.PlaceOf(after) : null,
            "Where it is to be plugged in; null for nowhere.", Presence.OrNull);

    private static JsonShape<ObjectiveLevel> Level { get; } = new JsonShape<ObjectiveLevel>(
            "ObjectiveLevel", "One level of what is looked for; less is better.")
        .Text("name", static level => level.Name, "What is counted.")
        .Figure("value", static level => level.Value, "What the wiring has.")
        .Figure("bound", static level => level.Bound, "What no wiring is below.");

    /// <summary>The shape of a plan.</summary>
    public static JsonShape<ExplainedPlan> Plan { get; } = new JsonShape<ExplainedPlan>("Plan", "What should feed what.")
        .Word(
            "status", static plan => plan.Result.Status, JsonWords.Of,
            "Proven best; feeds all, but not proven best; proven that not all can be fed; neither.")
        .List("feeds", static plan => WiredRig.Of(plan.Result.Rig).Feeds, Feed, "The wiring.")
        .Texts("toBuy", static plan => plan.Result.Check.ToBuy, "Supplies and leads that the rig has, and nobody yet.")
        .Texts("unfed", static plan => plan.Result.Unfed, "Loads that stay dark.")
        .List(
            "reasons", static plan => plan.Explanation.Reasons, Reason,
            "Demands that cannot hold together; every load that stays dark is in one of them.")
        .List("lacks", static plan => plan.Explanation.Dark, Lack, "For each load that stays dark the outlet that would do for it.")
        .Texts(
            "changes", static plan => plan.Explanation.Changes.Items.Select(static change => change.Text),
            "The smallest changes that would mend it; each was planned, and the rules refuse nothing of it.")
        .List("moves", static plan => plan.Moves, Move, "What changes against the rig's own wiring; empty where it has none.")
        .List("objective", static plan => plan.Result.Objective, Level, "What the wiring was chosen by, each level before the next.");

    /// <summary>Writes the answer and a line end.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="rig">The rig as it was, for what changes.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="explanation">What stands in the way of the loads it does not feed.</param>
    public static void Write(Stream output, Rig rig, PlanResult plan, PlanExplanation explanation)
    {
        var moves = rig.Wired is { Count: > 0 } ? LoadMove.Between(rig, plan.Rig) : [];
        JsonFormat.WriteLine(output, Plan, new ExplainedPlan(plan, explanation, moves));
    }
}
