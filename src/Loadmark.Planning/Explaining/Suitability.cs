using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Explaining;

/// <summary>Which outlets could feed a load if it were alone, asked of the rules.</summary>
internal static class Suitability
{
    /// <summary>The outlets that feed the load over a plain lead without harm or failure.</summary>
    public static List<OutletRef> OutletsFor(Rig rig, Load load, IReadOnlySet<string>? only)
    {
        var suitable = new List<OutletRef>();
        var lowest = LoadRating.Of(load).Voltage.Value.Low;
        foreach (var supply in rig.Supplies)
        {
            if (only?.Contains(supply.Id) == false)
                continue;
            foreach (var outlet in supply.Outlets)
            {
                if (Feeds(rig, load, lowest, supply, outlet))
                    suitable.Add(new OutletRef(supply.Id, outlet.Id));
            }
        }

        return suitable;
    }

    private static bool Feeds(Rig rig, Load load, Volts lowest, Supply supply, Outlet outlet)
    {
        foreach (var mode in OutletRating.Of(supply, outlet).Modes)
        {
            var feed = new Feed
            {
                From = [new OutletRef(supply.Id, outlet.Id)],
                At = mode.Volts is { } volts ? [volts.Contains(lowest) ? lowest : volts.Low] : [],
                To = [load.Id],
            };
            var alone = rig with { Mains = null, Loads = [load], Supplies = [supply], Leads = [], Wired = (ValueList<Feed>)[feed], Signal = [] };
            if (!RigChecker.Check(alone).IsRefused)
                return true;
        }

        return false;
    }
}
