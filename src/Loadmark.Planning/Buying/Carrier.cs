using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>
/// One supply as a carrier of loads: which loads fit on which of its kinds of outlets, and what each takes of its totals. Draws are
/// rounded down and limits up, so that nothing the rules allow is lost.
/// </summary>
internal sealed class Carrier
{
    private const decimal Micro = 1_000_000m;
    private readonly SupplyTerms _supply;
    private readonly List<Demand> _demands;
    private readonly KindFit?[][] _fits;
    private readonly ChainCapacity[] _capacities;
    private readonly int _plugs;
    private readonly bool _isQuiet;
    private readonly bool _isOneReturn;
    private readonly long[] _amps;
    private readonly long[] _watts;

    /// <summary>Looks at a supply.</summary>
    /// <param name="supply">The supply.</param>
    /// <param name="problem">What there is to feed.</param>
    /// <param name="isQuiet">Whether loads that mind company must have a return for themselves.</param>
    public Carrier(SupplyTerms supply, BuyProblem problem, bool isQuiet = false)
    {
        _supply = supply;
        _isQuiet = isQuiet;
        _isOneReturn = supply.Kinds.All(static kind => !kind.Rating.Isolated.Value)
            && supply.Kinds.Select(static kind => kind.Rating.Outlet.Bank).Distinct(StringComparer.Ordinal).Count() == 1;
        _demands = problem.Demands;
        _fits = [.. supply.Kinds.Select(kind => _demands.Select(demand => kind.FitOf(demand.Rating, problem.Leads)).ToArray())];
        _capacities = [.. supply.Kinds.Select(kind => new ChainCapacity(kind, problem))];
        _plugs = problem.Leads.MostPlugs;
        _amps = new long[_demands.Count];
        _watts = new long[_demands.Count];
        for (var demand = 0; demand < _demands.Count; demand++)
        {
            var fits = _fits.Select(kind => kind[demand]).Where(static fit => fit is not null).Select(static fit => fit!.Value.LeastVolts)
                .ToList();
            if (fits.Count == 0)
                continue;
            var volts = fits.Min();
            var start = LoadDraw.Least(_demands[demand].Rating, new Volts(volts)).Start;
            _amps[demand] = (long)decimal.Floor(start * Micro);
            _watts[demand] = (long)decimal.Floor(start * volts * Micro);
        }
    }

    /// <summary>Whether a demand's loads fit on some outlet.</summary>
    public bool Fits(int demand, CarryingWay way) => Array.Exists(_fits, kind => Fits(kind[demand], way));

    /// <summary>The supply's kinds of outlets.</summary>
    public IReadOnlyList<OutletKind> Kinds => _supply.Kinds;

    /// <summary>The most that loads on it can be worth: an upper bound.</summary>
    /// <param name="way">How outlets feed them.</param>
    /// <param name="worths">What each load of a demand is worth; not negative.</param>
    /// <param name="without">The kinds of which an outlet each is not to be had.</param>
    public long Most(CarryingWay way, long[] worths, ReadOnlySpan<int> without = default)
    {
        var most = MostOfAll(way, worths, without);
        if (!_isQuiet || !_isOneReturn)
            return most;

        // One return has one load that minds company, or any number of others.
        var alone = Enumerable.Range(0, _demands.Count).Where(demand => _demands[demand].MindsCompany && Fits(demand, way))
            .Select(demand => worths[demand]).DefaultIfEmpty().Max();
        return Math.Min(most, Math.Max(alone, MostOfAll(way, Others(worths), without)));
    }

    /// <summary>What loads are worth where those that mind company are worth nothing.</summary>
    private long[] Others(long[] worths) => [.. worths.Select((worth, demand) => _demands[demand].MindsCompany ? 0 : worth)];

    private long MostOfAll(CarryingWay way, long[] worths, ReadOnlySpan<int> without)
    {
        var byOutlets = way == CarryingWay.Shared
            ? MostShared(worths, without)
            : MostByOutlets(worths, way, without);
        return Math.Min(byOutlets, MostByTotals(worths, way));
    }

    private long MostShared(long[] worths, ReadOnlySpan<int> without)
    {
        var sum = 0L;
        var others = _isQuiet ? Others(worths) : worths;
        for (var kind = 0; kind < _capacities.Length; kind++)
        {
            // So has one lead.
            var most = _capacities[kind].Most(others, _plugs);
            if (_isQuiet)
                most = Math.Max(most, _capacities[kind].Most(worths, 1));
            sum += (_supply.Kinds[kind].Count - without.Count(kind)) * most;
        }

        return sum;
    }

    /// <summary>The most that loads on it can be worth by its totals alone, however many are on an outlet: an upper bound.</summary>
    private long MostByTotals(long[] worths, CarryingWay way)
    {
        var most = long.MaxValue;
        if (_supply.Amps is { } amps)
            most = Math.Min(most, Fill(worths, _amps, (long)decimal.Ceiling(amps * Micro), way));
        if (_supply.Watts is { } watts)
            most = Math.Min(most, Fill(worths, _watts, (long)decimal.Ceiling(watts * Micro), way));
        return most == long.MaxValue ? All(worths, way) : most;
    }

    /// <summary>
    /// The loads that outlets can take one each are the independent sets of a transversal matroid, so taking the worthiest first,
    /// moving others about where that makes room, gives the most.
    /// </summary>
    private long MostByOutlets(long[] worths, CarryingWay way, ReadOnlySpan<int> without)
    {
        var on = _supply.Kinds.Select(_ => new int[_demands.Count]).ToArray();
        var free = _supply.Kinds.Select(static kind => kind.Count).ToArray();
        foreach (var kind in without)
            free[kind]--;
        var sum = 0L;
        foreach (var demand in Enumerable.Range(0, _demands.Count)
            .Where(demand => worths[demand] > 0)
            .OrderByDescending(demand => worths[demand]))
        {
            for (var load = 0; load < _demands[demand].Count && Place(demand, new bool[free.Length]); load++)
                sum += worths[demand];
        }

        return sum;

        bool Place(int demand, bool[] tried)
        {
            for (var kind = 0; kind < free.Length; kind++)
            {
                if (tried[kind] || !Fits(_fits[kind][demand], way))
                    continue;
                tried[kind] = true;
                if (free[kind] > 0)
                {
                    free[kind]--;
                    on[kind][demand]++;
                    return true;
                }

                for (var other = 0; other < _demands.Count; other++)
                {
                    if (on[kind][other] == 0 || other == demand || !Place(other, tried))
                        continue;
                    on[kind][other]--;
                    on[kind][demand]++;
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>What a total can hold when the last load may be cut (the bound of the continuous knapsack), rounded down.</summary>
    private long Fill(long[] worths, long[] draws, long total, CarryingWay way)
    {
        var sum = 0m;
        var left = total;
        foreach (var demand in Enumerable.Range(0, _demands.Count).Where(demand => worths[demand] > 0 && Fits(demand, way))
            .OrderByDescending(demand => draws[demand] == 0 ? decimal.MaxValue : (decimal)worths[demand] / draws[demand]))
        {
            var draw = draws[demand] * _demands[demand].Count;
            if (draw > left)
                return (long)decimal.Floor(sum + ((decimal)worths[demand] * left / draws[demand]));
            sum += worths[demand] * _demands[demand].Count;
            left -= draw;
        }

        return (long)sum;
    }

    private long All(long[] worths, CarryingWay way) =>
        Enumerable.Range(0, _demands.Count).Where(demand => Fits(demand, way))
            .Sum(demand => worths[demand] * _demands[demand].Count);

    private static bool Fits(KindFit? fit, CarryingWay way) => fit is { } one && way switch
    {
        CarryingWay.AloneStraight => !one.Reverses,
        CarryingWay.AlonePlain => !one.Adapts,
        _ => true,
    };
}
