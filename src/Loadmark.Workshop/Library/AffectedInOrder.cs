using Loadmark.Core.Checks;
using Loadmark.Storage.Faults;

namespace Loadmark.Workshop.Library;

/// <summary>The rigs that a piece of gear means something to, in the order that people look at them.</summary>
public static class AffectedInOrder
{
    /// <summary>
    /// Finds the rigs that a change of gear means something to: the worst first, and what cannot be judged among the worst.
    /// </summary>
    /// <param name="rigs">Finds each.</param>
    /// <param name="gear">The piece.</param>
    /// <param name="options">How they are looked for.</param>
    /// <param name="stop">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public static async Task<List<AffectedRig>> FindAsync(
        AffectedRigs rigs, LibraryGear gear, AffectedOptions options, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(rigs);
        var found = new List<AffectedRig>();
        await foreach (var rig in rigs.FindAsync(gear, options, stop))
            found.Add(rig);
        return [.. found.OrderByDescending(static rig => rig.After?.Verdict ?? Severity.Harm)
            .ThenBy(static rig => rig.Rig.Name, StringComparer.OrdinalIgnoreCase)
            .ThenBy(static rig => rig.Rig.Id)];
    }
}
