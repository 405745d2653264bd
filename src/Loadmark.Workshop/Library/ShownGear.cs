using System.Collections.Immutable;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Library;

/// <summary>All that there is to say of one piece of gear.</summary>
/// <param name="Gear">The piece.</param>
/// <param name="Measured">The piece's readings, and what they come to.</param>
/// <param name="Changes">Every change, the oldest first.</param>
/// <param name="Rigs">The rigs that have it, the last changed first.</param>
public sealed record ShownGear(
    LibraryGear Gear, LoadMeasurements Measured, ImmutableArray<GearChange> Changes, ImmutableArray<RigSummary> Rigs)
{
    /// <summary>Gathers what is shown of a piece of gear.</summary>
    /// <param name="store">What is kept, opened.</param>
    /// <param name="editor">Tells what the readings come to.</param>
    /// <param name="gear">The piece.</param>
    /// <param name="stop">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public static async Task<ShownGear> OfAsync(Store store, LibraryEditor editor, LibraryGear gear, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(editor);
        ArgumentNullException.ThrowIfNull(gear);
        return new ShownGear(
            gear,
            await editor.MeasuredAsync(gear.Id, stop),
            await store.Gear.HistoryAsync(gear.Id, stop),
            [.. (await store.Gear.Uses.RigsWithAsync(gear.Kind, gear.Tag, stop)).Select(static rig => rig.Rig)]);
    }
}
