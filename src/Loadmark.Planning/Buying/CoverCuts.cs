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
    private readonly ImmutableArray<LeadStock> _leads;
    private readonly PairGain _pairs;
    private readonly bool _isQuiet;

    /// <summary>Looks at the supplies.</summary>
    /// <param name="problem">What there is to feed.</param>
    /// <param name="offers">The offers.</param>
    /// <param name="isQuiet">
    /// Whether everything must be fed with no finding of noise. Where outlets can be joined that adds nothing: what pairs gain is reckoned
    /// from supplies that are worth ever less with each outlet, and those with one return for all are not.
    /// </param>
    public CoverCuts(BuyProblem problem, OfferScreen offers, bool isQuiet = false)
    {
        _problem = problem;
        _isQuiet = isQuiet && problem.Leads.PairLeads == 0;
        _owned = [.. problem.Owned.Select(supply => new Carrier(supply, problem, _isQuiet))];
        _offers = [.. offers.Useful.Select(offer => new Carrier(offer.Terms, problem, _isQuiet))];
        _leads = [.. offers.Useful.Select(offer => problem.LeadsOf(offer.Offer, 1))];
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
        var leads = _problem.Leads;
        yield return Cut(CarryingWay.Alone, worths);
        if (leads.Extra > 0)
            yield return Cut(CarryingWay.Shared, worths);
        if (leads.Reversing > 0)
            yield return Cut(CarryingWay.AloneStraight, worths);
        if (leads.Adapting > leads.Reversing)
            yield return Cut(CarryingWay.AlonePlain, worths);
    }

    /// <summary>An offer that alone is worth all that is needed counts as that much and no more.</summary>
    private CoverCut Cut(CarryingWay way, long[] worths)
    {
        var need = worths.Select((worth, demand) => worth * _problem.Demands[demand].Count).Sum();
        var missing = need - _owned.Sum(carrier => carrier.Most(way, worths));
        missing = missing > 0 ? Math.Max(0, missing - MostOf(_problem.OwnedLeads, way, worths)) : 0;
        return new CoverCut(
            [.. _offers.Select((offer, place) => missing == 0
                ? 0
                : Math.Min(offer.Most(way, worths) + MostOf(_leads[place], way, worths), missing))],
            missing);
    }

    /// <summary>The most that leads add to what outlets carry in a way: an upper bound, of several leads the sum of each.</summary>
    private long MostOf(LeadStock leads, CarryingWay way, long[] worths)
    {
        if (way == CarryingWay.Shared)
            return leads.PairLeads > 0 ? _pairs.Of(leads.Pairs, way, worths) : 0;
        var adapted = way switch
        {
            CarryingWay.AloneStraight => leads.Reversing,
            CarryingWay.AlonePlain => leads.Adapting,
            _ => 0,
        };

        // A load that minds company is on no chain with others where nothing may hum.
        var joined = _isQuiet
            ? worths.Where((_, demand) => !_problem.Demands[demand].MindsCompany).DefaultIfEmpty().Max()
            : worths.Max();
        return (adapted * worths.Max()) + (leads.Extra * joined) + (leads.PairLeads > 0 ? _pairs.Of(leads.Pairs, way, worths) : 0);
    }

    private IEnumerable<long[]> Worths()
    {
        var demands = _problem.Demands;
        foreach (var set in Sets())
        {
            var members = Enumerable.Range(0, demands.Count).Where(demand => set.Contains(ClassOf(demands[demand].Rating))).ToHashSet();
            foreach (var least in members.Select(demand => StartOf(demands[demand].Rating)).Distinct().ToList())
                yield return [.. demands.Select((demand, index) => members.Contains(index) && StartOf(demand.Rating) >= least ? 1L : 0L)];
            if (_isQuiet)
                yield return [.. demands.Select((demand, index) => members.Contains(index) && demand.MindsCompany ? 1L : 0L)];
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
