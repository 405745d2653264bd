using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>One voltage that an outlet can be set to.</summary>
/// <param name="Limit">The most current there, in amps; null when nothing tells.</param>
/// <param name="Standing">The voltage at which it stands then.</param>
internal sealed record Setting(decimal? Limit, StandingVoltage Standing)
{
    /// <summary>The voltage; null when nothing tells it, and then there is nothing to set.</summary>
    public Volts? Volts => Standing.Volts;

    /// <summary>
    /// The voltage that draws are computed with: where it is not known zero, at which every load counts with the highest current that it
    /// may draw, and nothing against totals in watts. So do the rules count.
    /// </summary>
    public Volts Basis => Volts ?? Quantity<Volt>.Zero;

    /// <summary>
    /// The settings worth trying: those printed, and within a range those that some load is printed for, the lowest first; one of unknown
    /// voltage where nothing tells any.
    /// </summary>
    /// <param name="outlet">The outlet.</param>
    /// <param name="supply">Its supply.</param>
    /// <param name="loads">All loads of the rig.</param>
    public static IEnumerable<Setting> Of(OutletRating outlet, SupplyRating supply, IReadOnlyCollection<LoadRating> loads)
    {
        if (outlet.Modes is [{ Volts: null } only])
            return [Of(outlet, supply, null, only.Limit)];

        var volts = new SortedSet<Volts>();
        foreach (var mode in outlet.Modes)
        {
            if (mode.Volts is not { } range)
                continue;

            volts.Add(range.Low);
            volts.Add(range.High);
            if (range.IsSingle)
                continue;
            foreach (var load in loads)
            {
                var printed = load.Voltage.Value;
                if (range.Contains(printed.Low))
                    volts.Add(printed.Low);
                if (range.Contains(printed.High))
                    volts.Add(printed.High);
            }
        }

        return volts.Select(setting => Of(outlet, supply, setting, outlet.ModeAt(setting)?.LimitAt(setting)));
    }

    private static Setting Of(OutletRating outlet, SupplyRating supply, Volts? volts, Figure<Amps>? limit) =>
        new(limit?.Value.Value, StandingVoltage.Of(outlet, supply, limit, volts));
}
