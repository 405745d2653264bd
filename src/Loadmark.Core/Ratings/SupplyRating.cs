using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>What a supply can give in all and what mains it takes, from its typed figures and its label.</summary>
public sealed class SupplyRating
{
    private SupplyRating(Supply supply) => Supply = supply;

    /// <summary>The supply as the rig file has it.</summary>
    public Supply Supply { get; }

    /// <summary>What it can give over all outlets: typed, else as its label prints; null when nothing tells.</summary>
    public SupplyTotal? Total { get; private init; }

    /// <summary>The mains input: typed, else as its label prints; null when nothing tells.</summary>
    public MainsInput? Mains { get; private init; }

    /// <summary>
    /// Whether it holds its voltage: as stated; stated by implication where it takes mains from 120 V to 230 V, which
    /// only switched-mode supplies do (common practice, no source); null when nothing tells.
    /// </summary>
    public bool? Regulated { get; private init; }

    /// <summary>Joins what is known of a supply.</summary>
    public static SupplyRating Of(Supply supply)
    {
        var mains = supply.Mains?.Mains ?? supply.Label?.Mains;
        var wide = mains?.Volts is { } volts && volts.Low.Value <= 120m && volts.High.Value >= 230m;
        return new SupplyRating(supply)
        {
            Total = supply.Total ?? PrintedTotal(supply),
            Mains = mains,
            Regulated = supply.Regulated ?? (wide ? true : null),
        };
    }

    /// <summary>
    /// A label on the supply itself that prints one output speaks for all its outlets together: in watts where it
    /// prints watts, else in amps. With one outlet it is that outlet's limit and nothing more.
    /// </summary>
    private static SupplyTotal? PrintedTotal(Supply supply)
    {
        if (supply.Outlets.Count < 2 || supply.Label is not { Modes: [var mode] })
            return null;
        if (mode.Watts is { Origin: Origin.Stated } watts)
            return new SupplyTotal(null, watts.Value);
        return mode.Amps is { } amps ? new SupplyTotal(amps.Value, null) : null;
    }
}
