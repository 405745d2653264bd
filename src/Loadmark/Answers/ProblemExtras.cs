using System.Text.Json;
using Loadmark.Files.Errors;
using Loadmark.Shapes;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>What some problems tell beyond what every problem does.</summary>
internal sealed record ProblemExtras
{
    /// <summary>The shape of what a problem says besides.</summary>
    public static JsonShape<ProblemExtras> Shape { get; } = new JsonShape<ProblemExtras>("", "")
        .List(
            "errors", static extras => extras.Errors, CheckJson.Fault, "What keeps the rig, or the gear, from being read.",
            Presence.OrAbsent)
        .List(
            "priceErrors", static extras => extras.PriceErrors, CheckJson.Fault, "What keeps the price list from being read.",
            Presence.OrAbsent)
        .List(
            "readingErrors", static extras => extras.ReadingErrors, CheckJson.Fault, "What keeps the readings from being read.",
            Presence.OrAbsent)
        .Value("present", static extras => extras.Present, StoredRigJson.Rig, Presence.OrAbsent)
        .Value("presentGear", static extras => extras.PresentGear, GearJson.Shown, Presence.OrAbsent);

    /// <summary>What keeps a rig, or gear, from being read; null where it is not about that.</summary>
    public IReadOnlyList<FileError>? Errors { get; init; }

    /// <summary>What keeps a price list from being read; null where nothing does.</summary>
    public IReadOnlyList<FileError>? PriceErrors { get; init; }

    /// <summary>What keeps readings from being read; null where nothing does.</summary>
    public IReadOnlyList<FileError>? ReadingErrors { get; init; }

    /// <summary>The rig as somebody else has kept it by now; null where it is not about that.</summary>
    public StoredRig? Present { get; init; }

    /// <summary>The piece of gear as somebody else has kept it by now; null where it is not about that.</summary>
    public ShownGear? PresentGear { get; init; }

    /// <summary>Writes the members that there are.</summary>
    /// <param name="json">Where to, within the object of the problem.</param>
    public void Write(Utf8JsonWriter json) => Shape.WriteMembers(json, this);
}
