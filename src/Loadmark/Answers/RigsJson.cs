using Loadmark.Core.Checks;
using Loadmark.Shapes;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>Rigs that are kept as JSON, as the commands tell them.</summary>
internal static class RigsJson
{
    private static JsonShape<RigSummary> Rig { get; } = new JsonShape<RigSummary>("", "")
        .Uuid("id", static rig => rig.Id, "What the rig is known by.")
        .Text("rig", static rig => rig.Name, "Its name.")
        .Count("revision", static rig => rig.Revision, "The rig's revision.");

    private static JsonShape<RigSummary> Listed { get; } = new JsonShape<RigSummary>("", "A kept rig.")
        .Include(Rig, static rig => rig)
        .Moment("changed", static rig => GearJson.Moment(rig.Changed), "When it was changed last, UTC.");

    private static JsonShape<IReadOnlyList<RigSummary>> List { get; } = new JsonShape<IReadOnlyList<RigSummary>>(
            "", "The rigs that are kept.")
        .List("rigs", static rigs => rigs, Listed, "The last changed first.");

    private static JsonShape<AffectedRig> Affected { get; } = new JsonShape<AffectedRig>(
            "RigAffected", "A rig that has other figures of a piece of gear than the library now has, or had.")
        .Include(Rig, static rig => rig.Rig)
        .Flag(
            "takesFromLibrary", static rig => rig.TakesFromLibrary,
            "Whether it takes the piece from the library, and so has the new figures already.")
        .Flag(
            "inDoubt", static rig => rig.IsInDoubt,
            "Whether its gear of that tag may be another piece: neither name nor label is that of the library's.")
        .Include(GearJson.Differences, static rig => rig.Differences)
        .Word(
            "verdictBefore", static rig => WordOf(rig.Before), JsonWords.Severities,
            "The verdict with the figures that it has, or had; null where it cannot be judged.", Presence.OrNull)
        .Word(
            "verdictAfter", static rig => WordOf(rig.After), JsonWords.Severities,
            "The verdict with the library's figures; null where it cannot be judged.", Presence.OrNull)
        .List("newFindings", AffectedFindings.New, CheckJson.Finding, "Findings that were not there before, the worst first.")
        .Text("because", static rig => rig.Problem, "Why it cannot be judged; null where it can.", Presence.OrNull);

    /// <summary>The rigs that a piece of gear means something to.</summary>
    public static JsonShape<GearAndRigs> AllAffected { get; } = new JsonShape<GearAndRigs>(
            "RigsAffected", "A piece of gear, and the rigs that have other figures of it.")
        .Include(GearJson.Head, static found => found.Gear)
        .List("affected", static found => found.Rigs, Affected, "The rigs, the worst first.");

    /// <summary>Writes a list and a line end.</summary>
    public static void Write(Stream output, IReadOnlyList<RigSummary> rigs) => JsonFormat.WriteLine(output, List, rigs);

    /// <summary>Writes the rigs that a piece of gear means something to, and a line end.</summary>
    public static void Write(Stream output, LibraryGear gear, IReadOnlyList<AffectedRig> rigs) =>
        JsonFormat.WriteLine(output, AllAffected, new GearAndRigs(gear, rigs));

    private static string? WordOf(CheckResult? result) => result is null ? null : JsonWords.Of(result.Verdict);
}
