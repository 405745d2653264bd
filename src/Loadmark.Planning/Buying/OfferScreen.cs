using Loadmark.Core.Checks;
using Loadmark.Core.Offers;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>Sorts out the offers that are of no use, and those that another one beats in everything.</summary>
internal sealed class OfferScreen
{
    private readonly BuyProblem _problem;
    private readonly Dictionary<string, OfferLeftOut> _leftOut = new(StringComparer.Ordinal);

    /// <summary>Sorts offers into those to choose from and those left out.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public OfferScreen(BuyProblem problem, IReadOnlyList<Offer> offers, CancellationToken cancellation)
    {
        _problem = problem;
        LeaveOutHarmful(offers);
        var useful = new List<OfferTerms>();
        var leads = new List<LeadOffer>();
        foreach (var offer in offers.Where(offer => !_leftOut.ContainsKey(offer.Id)))
        {
            cancellation.ThrowIfCancellationRequested();
            if (offer is LeadOffer lead)
            {
                leads.Add(lead);
                continue;
            }

            var supply = ((SupplyOffer)offer).Supply;
            var terms = problem.TermsOf(supply);
            var fitting = problem.Demands.Where(demand => terms.Kinds.Any(kind => kind.FitOf(demand.Rating, problem.Leads) is not null))
                .Sum(static demand => demand.Count);
            var inputs = problem.Inputs.Any(input => terms.Kinds.Any(kind => kind.FitOf(input, problem.Leads) is not null))
                ? problem.MostInputs
                : 0;
            if (fitting + inputs == 0 && problem.Leads.PairLeads == 0)
                LeaveOut(offer, UselessBecause(terms, problem.Demands), isBeaten: false);
            else
                useful.Add(new OfferTerms(offer, terms, problem.SpareOf(supply), fitting + inputs + (2 * problem.Leads.PairLeads)));
        }

        var kept = LeaveOutBeaten(useful, cancellation).Select(index => useful[index]).ToList();
        var kinds = problem.Owned.Concat(kept.Select(static offer => offer.Terms)).SelectMany(static terms => terms.Kinds).ToList();
        var places = offers.Select((offer, place) => (offer.Id, place)).ToDictionary(StringComparer.Ordinal);
        Useful = [.. kept.Concat(UsefulLeads(leads, kinds)).OrderBy(offer => places[offer.Offer.Id])];
        Order = OrderOf(Useful);
        LeftOut = [.. offers.Where(offer => _leftOut.ContainsKey(offer.Id)).Select(offer => _leftOut[offer.Id])];
    }

    /// <summary>The offers to choose from, in the order of the list.</summary>
    public List<OfferTerms> Useful { get; }

    /// <summary>Whether the useful offer of the first index can stand in for that of the second, whatever is fed.</summary>
    public bool[,] Order { get; }

    /// <summary>The offers that are left out, each with why.</summary>
    public List<OfferLeftOut> LeftOut { get; }

    private void LeaveOutHarmful(IReadOnlyList<Offer> offers)
    {
        var supplies = offers.OfType<SupplyOffer>().ToList();
        var all = new Rig { Name = "", Mains = _problem.Rig.Mains, Supplies = [.. supplies.Select(static offer => offer.Supply)] };
        var byId = supplies.ToDictionary(static offer => offer.Id, StringComparer.Ordinal);
        foreach (var finding in OtherMains.In(NameplateCheck.Of(all)))
            LeaveOut(byId[finding.Subjects[0]], finding.Message, isBeaten: false);
    }

    /// <summary>
    /// The leads with which something can be fed that plain leads do not feed. Of two leads neither stands in for the other, since there
    /// may be but few of either.
    /// </summary>
    private IEnumerable<OfferTerms> UsefulLeads(List<LeadOffer> leads, List<OutletKind> kinds)
    {
        LoadRating[] loads = [.. _problem.Demands.Select(static demand => demand.Rating), .. _problem.Inputs];
        foreach (var offer in leads)
        {
            var stock = _problem.LeadsOf(offer, 1);
            var ends = LeadStock.EndsOf(offer.Lead);
            var helps = stock.Extra + stock.PairLeads > 0
                || (ends != LeadEnds.Plain && loads.Any(load => kinds.Exists(kind => kind.IsHelpedBy(ends, load))));
            if (helps)
                yield return new OfferTerms(offer, SupplyTerms.None, 0, _problem.MostOf(offer));
            else
                LeaveOut(offer, "No load here needs it: what could be fed over it can be fed over a plain lead.", isBeaten: false);
        }
    }

    /// <summary>Why a supply feeds nothing here: what is not known of it where something might suit, else its voltages.</summary>
    private static string UselessBecause(SupplyTerms terms, List<Demand> demands)
    {
        var nearest = terms.Kinds.SelectMany(kind => demands.Select(demand => kind.DoubtsOf(demand.Rating))).OfType<string>()
            .FirstOrDefault();
        if (nearest is not null)
            return $"Not known to suit: {nearest}.";
        var volts = terms.Kinds.SelectMany(static kind => kind.Rating.Modes).Select(static mode => mode.Volts)
            .Where(static range => range is not null)
            .Select(static range => range!.Value.ToString()).Distinct(StringComparer.Ordinal).ToList();
        return volts.Count == 0
            ? "Nothing tells what voltage it gives."
            : $"No outlet of it ({string.Join(", ", volts)}) gives any load here what it needs.";
    }

    /// <summary>
    /// Leaves out every offer that another can stand in for at no higher price, with no more mass and no less to spare. Of two
    /// that are equal in all that, the first on the list stays.
    /// </summary>
    private List<int> LeaveOutBeaten(List<OfferTerms> useful, CancellationToken cancellation)
    {
        // Price, mass and spare are compared first: they cost next to nothing, and a long list has millions of pairs.
        var kept = new List<int>();
        var standIns = StandInsOf(useful);
        bool Beats(int one, int other) => BeatsAside(useful[one], useful[other]) && StandsIn(standIns, one, other);
        for (var index = 0; index < useful.Count; index++)
        {
            cancellation.ThrowIfCancellationRequested();
            var better = Enumerable.Range(0, useful.Count)
                .Where(other => other != index && Beats(other, index) && (other < index || !Beats(index, other)))
                .Select(other => (int?)other).FirstOrDefault();
            if (better is { } one)
                LeaveOut(
                    useful[index].Offer,
                    $"{useful[one].Offer.Id} gives at least as much for no more money and no more mass.",
                    isBeaten: true);
            else
                kept.Add(index);
        }

        return kept;
    }

    private static bool BeatsAside(OfferTerms one, OfferTerms other) =>
        one.Offer.Price <= other.Offer.Price && one.SpareWatts >= other.SpareWatts
        && (other.Offer.MassGrams is not { } mass || one.Offer.MassGrams <= mass);

    private bool[,] OrderOf(List<OfferTerms> offers)
    {
        var standIns = StandInsOf(offers);
        var order = new bool[offers.Count, offers.Count];
        for (var one = 0; one < offers.Count; one++)
        {
            for (var other = 0; other < offers.Count; other++)
                order[one, other] = one == other || StandsIn(standIns, one, other);
        }

        return order;
    }

    /// <summary>
    /// What may stand in for others: no lead, and nothing where two outlets side by side must be alike, as a stand-in need not be.
    /// </summary>
    private StandIn?[] StandInsOf(List<OfferTerms> offers) =>
        [.. offers.Select(offer => _problem.Leads.Parallel == 0 && offer.Offer is SupplyOffer supply ? new StandIn(supply.Supply) : null)];

    private static bool StandsIn(StandIn?[] standIns, int one, int other) =>
        standIns[one] is { } mine && standIns[other] is { } theirs && mine.StandsInFor(theirs);

    private void LeaveOut(Offer offer, string because, bool isBeaten) => _leftOut.Add(offer.Id, new OfferLeftOut(offer, because, isBeaten));
}
