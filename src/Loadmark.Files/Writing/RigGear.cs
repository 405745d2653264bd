using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;

namespace Loadmark.Files.Writing;

/// <summary>
/// Stands in for the gear library where a text is compared with a rig: what the rig has from there, else what it has itself, and of
/// anything else a thing of which nothing is said. So a text can be edited wherever it is.
/// </summary>
internal sealed class RigGear : IGearLookup
{
    private readonly Dictionary<string, Load> _loads = [];
    private readonly Dictionary<string, Supply> _supplies = [];

    /// <summary>What a rig has from the library.</summary>
    public RigGear(Rig rig)
    {
        foreach (var load in rig.Loads)
        {
            var given = load.FromLibrary ?? load;
            _loads.TryAdd(GearTag.KeyOf(given.Id), given);
        }

        foreach (var supply in rig.Supplies)
        {
            var given = supply.FromLibrary ?? supply;
            _supplies.TryAdd(GearTag.KeyOf(given.Id), given);
        }
    }

    /// <summary>Lets go of the library where a thing no longer has the tag that it has there: its figures then stand in the rig.</summary>
    public static Rig Normalise(Rig rig)
    {
        var loads = rig.Loads.Items.Select(
            static load =>
                OwnKeys.Base(load.FromLibrary, load.Id, static given => given.Id) == load.FromLibrary
                    ? load
                    : load with { FromLibrary = null });
        var supplies = rig.Supplies.Items.Select(
            static supply =>
                OwnKeys.Base(supply.FromLibrary, supply.Id, static given => given.Id) == supply.FromLibrary
                    ? supply
                    : supply with { FromLibrary = null });
        return rig.Loads.Items.Any(static load => load.FromLibrary is not null)
            || rig.Supplies.Items.Any(static supply => supply.FromLibrary is not null)
            ? rig with { Loads = [.. loads], Supplies = [.. supplies] }
            : rig;
    }

    /// <inheritdoc/>
    public Load? FindLoad(string tag) => _loads.GetValueOrDefault(GearTag.KeyOf(tag)) ?? new Load { Id = tag };

    /// <inheritdoc/>
    public Supply? FindSupply(string tag) => _supplies.GetValueOrDefault(GearTag.KeyOf(tag)) ?? new Supply { Id = tag };

    /// <inheritdoc/>
    public IReadOnlyList<string> Near(GearKind kind, string tag) => [];
}
