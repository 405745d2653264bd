using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>
/// How much one outlet of a kind can carry over a lead with several plugs. Draws are rounded down and limits up, so that nothing the
/// rules allow is lost; one setting holds for all loads on it.
/// </summary>
internal sealed class ChainCapacity
{
    private const decimal Micro = 1_000_000m;
    private readonly List<Demand> _demands;
    private readonly List<Limits> _settings = [];

    /// <summary>Looks at an outlet.</summary>
    /// <param name="kind">The outlet.</param>
    /// <param name="problem">What there is to feed.</param>
    public ChainCapacity(OutletKind kind, BuyProblem problem)
    {
        _demands = problem.Demands;
        for (var place = 0; place < kind.Settings.Length; place++)
        {
            var setting = kind.Settings[place];
            var most = setting.Limit is { } limit ? decimal.Ceiling(limit * OutletKind.Forgiven * Micro) : (decimal?)null;
            var surge = most is { } amps
                ? Math.Max(amps, decimal.Ceiling((kind.Surge ?? 0) * OutletKind.Forgiven * Micro))
                : (decimal?)null;
            var runs = new long?[_demands.Count];
            var starts = new long[_demands.Count];
            for (var demand = 0; demand < _demands.Count; demand++)
            {
                var load = _demands[demand].Rating;
                if (!kind.SuitsAt(place, load, problem.Leads))
                    continue;
                var draw = LoadDraw.Least(load, setting.Basis);
                runs[demand] = (long)decimal.Floor(draw.Run * Micro);
                starts[demand] = (long)decimal.Floor(draw.Start * Micro);
            }

            _settings.Add(new Limits(most, surge, runs, starts));
        }
    }

    /// <summary>The most that loads on one such outlet can be worth: an upper bound.</summary>
    /// <param name="worths">What each load of a demand is worth; not negative.</param>
    /// <param name="plugs">How many loads a lead takes.</param>
    public long Most(long[] worths, int plugs)
    {
        var most = 0L;
        foreach (var setting in _settings)
        {
            var demands = Enumerable.Range(0, worths.Length).Where(demand => worths[demand] > 0 && setting.Runs[demand] is not null)
                .ToList();
            var count = Math.Min(plugs, Math.Min(
                CountWithin(demands, demand => setting.Runs[demand]!.Value, setting.Limit, plugs),
                CountWithin(demands, demand => setting.Starts[demand], setting.Surge, plugs)));
            var worth = 0L;
            foreach (var demand in demands.OrderByDescending(demand => worths[demand]))
            {
                var taken = Math.Min(count, _demands[demand].Count);
                worth += taken * worths[demand];
                count -= taken;
            }

            most = Math.Max(most, worth);
        }

        return most;
    }

    /// <summary>How many loads fit within a limit, those that draw least first.</summary>
    private int CountWithin(List<int> demands, Func<int, long> drawOf, decimal? limit, int plugs)
    {
        if (limit is not { } left)
            return plugs;
        var count = 0;
        foreach (var demand in demands.OrderBy(drawOf))
        {
            for (var load = 0; load < _demands[demand].Count && count < plugs; load++, count++)
            {
                left -= drawOf(demand);
                if (left < 0)
                    return count;
            }
        }

        return count;
    }

    /// <summary>One setting of the outlet.</summary>
    /// <param name="Limit">What it gives, in millionths of an ampere; null where nothing tells.</param>
    /// <param name="Surge">What it bears while loads start.</param>
    /// <param name="Runs">What each load of a demand draws at the least; null where it does not suit.</param>
    /// <param name="Starts">What it draws at the least while it starts.</param>
    private sealed record Limits(decimal? Limit, decimal? Surge, long?[] Runs, long[] Starts);
}
