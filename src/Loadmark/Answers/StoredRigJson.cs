using System.Globalization;
using Loadmark.Shapes;
using Loadmark.Storage.Rigs;

namespace Loadmark.Answers;

/// <summary>Kept rigs as JSON, as programs are told them.</summary>
internal static class StoredRigJson
{
    private static JsonShape<RigSummary> Head { get; } = new JsonShape<RigSummary>("RigSummary", "A kept rig, without its text.")
        .Uuid("id", static rig => rig.Id, "What it is known by.")
        .Text("name", static rig => rig.Name, "Its name.")
        .Count("revision", static rig => rig.Revision, "Grows with every change; to be sent back in If-Match with the next one.")
        .Moment("changed", static rig => Moment(rig.Changed), "When it was changed last, UTC.");

    /// <summary>The shape of the list of stored rigs.</summary>
    public static JsonShape<IReadOnlyList<RigSummary>> List { get; } = new JsonShape<IReadOnlyList<RigSummary>>(
            "RigList", "The rigs that are kept.")
        .List("rigs", static rigs => rigs, Head, "The last changed first.");

    /// <summary>The shape of one stored rig, with its text.</summary>
    public static JsonShape<StoredRig> Rig { get; } = new JsonShape<StoredRig>("KeptRig", "A kept rig.")
        .Include(Head, static rig => new RigSummary(rig.Id, rig.Name, rig.Changed, rig.Revision))
        .Text("text", static rig => rig.Text, "The rig file's text, to the letter as it was kept.")
        .Text("undo", static rig => rig.UndoWhat, "What undoing would take back; null where there is nothing.", Presence.OrNull)
        .Text("redo", static rig => rig.RedoWhat, "What redoing would bring back; null where there is nothing.", Presence.OrNull);

    private static string Moment(DateTimeOffset moment) =>
        moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture);
}
