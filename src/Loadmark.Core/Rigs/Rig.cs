namespace Loadmark.Core.Rigs;

/// <summary>A rig: what draws, what gives, how they are joined, in which order the signal runs, where it is played.</summary>
/// <remarks>
/// A rig that a reader of this program made refers only to loads, outlets and leads that it has, each id once. Whoever
/// makes one by hand owes the same; the checks throw <see cref="ArgumentException"/> where it does not hold.
/// </remarks>
public sealed record Rig
{
    /// <summary>The share of each limit that is to stay free where the rig does not say: 10 %.</summary>
    public const decimal CommonHeadroom = 0.10m;

    /// <summary>The rig's name.</summary>
    public required string Name { get; init; }

    /// <summary>The mains where the rig is played; null when not given.</summary>
    public RigMains? Mains { get; init; }

    /// <summary>The share of each limit that is to stay free, 0 to below 1; null when not given.</summary>
    public decimal? Headroom { get; init; }

    /// <summary>Everything that draws, in the order of the file.</summary>
    public ValueList<Load> Loads { get; init; }

    /// <summary>
    /// Everything that draws: the loads, then each supply that is fed by another, as a load of its own id. A load that has the id of such a
    /// supply stands for it.
    /// </summary>
    public IEnumerable<Load> EveryLoad
    {
        get
        {
            foreach (var load in Loads)
                yield return load;
            foreach (var supply in Supplies)
            {
                if (SupplyInput.Of(supply) is { } input && !Loads.Items.Any(load => load.Id == input.Id))
                    yield return input;
            }
        }
    }

    /// <summary>Everything that gives, in the order of the file.</summary>
    public ValueList<Supply> Supplies { get; init; }

    /// <summary>The leads on hand other than plain straight ones.</summary>
    public ValueList<Lead> Leads { get; init; }

    /// <summary>What feeds what; null when it is left to be planned.</summary>
    public ValueList<Feed>? Wired { get; init; }

    /// <summary>
    /// The order of the signal path: tags of loads, and other words ("amp") for what is not a load. Empty when not given.
    /// </summary>
    public ValueList<string> Signal { get; init; }

    /// <summary>The same rig with all of its figures its own: nothing of it is taken from the gear library any more.</summary>
    public Rig WithoutLibrary() => this with
    {
        Loads = [.. Loads.Items.Select(static load => load with { FromLibrary = null })],
        Supplies = [.. Supplies.Items.Select(static supply => supply with { FromLibrary = null })],
    };

    /// <summary>The names of the supplies and leads that are yet to be bought, in the order of the file.</summary>
    public IEnumerable<string> ToBuy =>
    [
        .. Supplies.Items.Where(static supply => supply.ToBuy).Select(static supply => supply.Id),
        .. Leads.Items.Where(static lead => lead.ToBuy).Select(static lead => lead.Id),
    ];

    /// <summary>The headroom in force.</summary>
    public decimal HeadroomInForce => Headroom ?? CommonHeadroom;
}
