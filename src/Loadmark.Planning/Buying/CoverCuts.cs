using System.Collections.Immutable;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Buying;

/// <summary>
/// What every combination that feeds everything must have. Whatever the loads are said to be worth, those fed are worth no more
/// than what each supply can carry at the most; so the most that supplies and leads can carry, added up, is at least what all loads
/// are worth. Loads are counted (those of some voltages that draw at least so much), and weighed by their draw in watts and in amps.
/// </summary>
internal sealed class CoverCuts
{
    /// <summary>Sets of voltages are taken in all combinations up to this many voltages, beyond that one by one and together.</summary>
    private const int MostClasses = 5;
    private const decimal Micro = 1_000_000m;

    private readonly BuyProblem _problem;
    private readonly ImmutableArray<Carrier> _owned;
    private readonly ImmutableArray<Carrier> _offers;
    private readonly PairGain _pairs;

    /// <summary>Looks at the supplies.</summary>
    public CoverCuts(BuyProblem problem, OfferScreen offers)
    {
        _problem = problem;
        _owned = [.. problem.Owned.Select(supply => new Carrier(supply, problem))];
        _offers = [.. offers.Useful.Select(offer => new Carrier(offer.Terms, problem))];
        _pairs = new PairGain(problem, [.. _owned, .. _offers]);
    }

    /// <summary>The cuts, without those that another one implies.</summary>
    public List<CoverCut> All()
    {
        var kept = new List<CoverCut>();
        foreach (var cut in Worths().SelectMany(Of).Where(static cut => cut.Need > 0))
        {
            if (kept.Exists(other => other.Implies(cut)))
                continue;
            kept.RemoveAll(cut.Implies);
            kept.Add(cut);
        }

        return kept;
    }

    private IEnumerable<CoverCut> Of(long[] worths)
    {
        var (leads, all) = (_problem.Leads, worths.Select((worth, demand) => worth * _problem.Demands[demand].Count).Sum());
        var most = worths.Max();
        yield return Cut(CarryingWay.Alone, worths, all - (leads.Extra * most));
        if (leads.Extra > 0)
            yield return Cut(CarryingWay.Shared, worths, all);
        if (leads.Reversing > 0)
            yield return Cut(CarryingWay.AloneStraight, worths, all - ((leads.Extra + leads.Reversing) * most));
    }

    /// <summary>A supply that alone is worth all that is needed counts as that much and no more.</summary>
    private CoverCut Cut(CarryingWay way, long[] worths, long need)
    {
        var missing = need - _owned.Sum(carrier => carrier.Most(way, worths));
        if (missing > 0 && _problem.Leads.PairLeads > 0)
            missing -= _pairs.Of(way, worths);
        missing = Math.Max(0, missing);
        return new CoverCut([.. _offers.Select(offer => missing == 0 ? 0 : Math.Min(offer.Most(way, worths), missing))], missing);
    }

    private IEnumerable<long[]> Worths()
    {
        var demands = _problem.Demands;
        foreach (var set in Sets())
        {
            var members = Enumerable.Range(0, demands.Count).Where(demand => set.Contains(ClassOf(demands[demand].Rating))).ToHashSet();
            foreach (var least in members.Select(demand => StartOf(demands[demand].Rating)).Distinct().ToList())
                yield return [.. demands.Select((demand, index) => members.Contains(index) && StartOf(demand.Rating) >= least ? 1L : 0L)];
            yield return [.. demands.Select(
                (demand, index) => members.Contains(index) ? (long)decimal.Floor(StartOf(demand.Rating) * Micro) : 0)];
            yield return [.. demands.Select((demand, index) => members.Contains(index)
                ? (long)decimal.Floor(StartOf(demand.Rating) * demand.Rating.Voltage.Value.Low.Value * Micro)
                : 0)];
        }
    }

    private IEnumerable<HashSet<object>> Sets()
    {
        var classes = _problem.Demands.Select(static demand => ClassOf(demand.Rating)).Distinct().ToList();
        if (classes.Count > MostClasses)
            return [.. classes.Select(static one => new HashSet<object> { one }), [.. classes]];
        return Enumerable.Range(1, (1 << classes.Count) - 1)
            .Select(set => classes.Where((_, place) => (set >> place & 1) == 1).ToHashSet());
    }

    private static object ClassOf(LoadRating rating) => (rating.Form.Value, rating.Voltage.Value, rating.Polarity.Value, rating.Plug.Value);

    private static decimal StartOf(LoadRating rating) => rating.Starting?.Value.Value ?? 0;
}
