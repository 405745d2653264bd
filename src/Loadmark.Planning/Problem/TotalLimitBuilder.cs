using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>Lists what supplies and banks can give in all, less what pinned feeds take.</summary>
internal sealed class TotalLimitBuilder(WiredRig pinned, decimal headroom)
{
    /// <summary>The limits, in the order of the file.</summary>
    public IEnumerable<TotalLimit> Build()
    {
        foreach (var supply in pinned.Supplies)
        {
            foreach (var bank in supply.Supply.Banks)
            {
                foreach (var limit in Of(supply.Supply.Id, bank.Name, bank.Total))
                    yield return limit;
            }

            if (supply.Total is not { } total)
                continue;
            foreach (var limit in Of(supply.Supply.Id, null, total))
                yield return limit;
        }
    }

    private IEnumerable<TotalLimit> Of(string supply, string? bank, SupplyTotal total)
    {
        if (total.Amps is { } amps)
            yield return Of(supply, bank, amps.Value, inWatts: false);
        if (total.Watts is { } watts)
            yield return Of(supply, bank, watts.Value, inWatts: true);
    }

    private TotalLimit Of(string supply, string? bank, decimal most, bool inWatts)
    {
        long run = 0;
        long start = 0;
        foreach (var outlet in pinned.Outlets)
        {
            if (outlet.Rating.Supply.Id != supply || (bank is not null && outlet.Rating.Outlet.Bank != bank))
                continue;

            var factor = inWatts ? outlet.Volts?.Value ?? 0 : 1;
            run += MicroUnits.Draw(outlet.Run.Value * factor);
            start += MicroUnits.Draw(outlet.Start.Value * factor);
        }

        var limit = MicroUnits.Limit(most);
        return new TotalLimit
        {
            Supply = supply,
            Bank = bank,
            InWatts = inWatts,
            Run = Math.Max(0, limit - run),
            Usable = MicroUnits.Limit(most * (1 - headroom)) - run,
            Start = Math.Max(0, limit - start),
            IsOver = run > limit,
        };
    }
}
