using System.Collections.Immutable;
using Loadmark.Core.Checks;
using Loadmark.Core.Offers;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Buying;

/// <summary>What there is to feed, what there is already, and what the list offers.</summary>
internal sealed class BuyProblem
{
    private readonly bool _acrossBoards;
    private readonly SpareCapacity _spare;
    private readonly int _loads;
    private readonly LoadRating[] _ratings;

    /// <summary>Looks everything up.</summary>
    /// <param name="rig">The rig, loads to come included.</param>
    /// <param name="only">The supplies of the rig that may be used; null for all.</param>
    /// <param name="offers">The price list.</param>
    /// <param name="acrossBoards">Whether supplies of one board may feed loads of another.</param>
    public BuyProblem(Rig rig, IReadOnlySet<string>? only, IReadOnlyList<Offer> offers, bool acrossBoards = false)
    {
        _acrossBoards = acrossBoards;
        Rig = rig with { Wired = [.. (rig.Wired ?? []).Items.Where(static feed => feed.Pinned)] };
        Only = only;
        Pinned = WiredRig.Of(Rig);
        Demands = Demand.Of(Pinned);
        _loads = Demands.Sum(static demand => demand.Count);
        var check = NameplateCheck.Of(Pinned);
        HumsAsPinned = check.Findings.Items.Any(static finding => finding.Severity == Severity.Noise);
        var idle = OtherMains.In(check).Select(static finding => finding.Subjects[0]).ToHashSet(StringComparer.Ordinal);
        var usable = Pinned.Supplies.Items
            .Where(supply => !idle.Contains(supply.Supply.Id) && only?.Contains(supply.Supply.Id) is not false).ToList();
        var loads = Pinned.Loads.Items.Where(load => !load.IsFedSupply).Select(static load => load.Rating).ToList();
        var notFed = FedSupplies.NotFed(Pinned).ToHashSet(StringComparer.Ordinal);
        Inputs =
        [
            .. Pinned.Loads.Items.Where(load => notFed.Contains(load.Id)).Select(static load => load.Rating),
            .. offers.OfType<SupplyOffer>().Where(static offer => SupplyInput.MustBeFed(offer.Supply))
            .Select(static offer => LoadRating.Of(SupplyInput.Of(offer.Supply)!)),
        ];
        MostInputs = notFed.Count + (Inputs.Length > notFed.Count ? _loads : 0);
        var owned = Pinned.Rig.Leads.Items.Select(lead => (lead, LeadsLeft.Of(lead, Pinned, _loads))).ToList();
        OwnedLeads = new LeadStock(owned, _loads);
        Leads = new LeadStock(owned.Concat(offers.OfType<LeadOffer>().Select(offer => (offer.Lead, MostOf(offer)))), _loads);
        _ratings = [.. loads, .. Inputs];
        Owned = [.. usable.Select(supply => SupplyTerms.Left(Pinned, supply, _ratings))];
        _spare = new SpareCapacity(loads, Leads.Series > 0 || Inputs.Length > 0);
        OwnedSpare = usable.Sum(supply => _spare.WattsOf(supply.Supply)) - _spare.DrawnWatts;
    }

    /// <summary>The rig with its pinned feeds only.</summary>
    public Rig Rig { get; }

    /// <summary>The supplies of the rig that may be used; null for all.</summary>
    public IReadOnlySet<string>? Only { get; }

    /// <summary>The rig with its pinned feeds, looked up.</summary>
    public WiredRig Pinned { get; }

    /// <summary>Whether the pinned feeds alone have a finding of noise, which nothing that is bought can mend.</summary>
    public bool HumsAsPinned { get; }

    /// <summary>What there is to feed.</summary>
    public List<Demand> Demands { get; }

    /// <summary>The inputs of supplies that others must feed: of those at hand that nothing feeds, and of those on the list.</summary>
    public ImmutableArray<LoadRating> Inputs { get; }

    /// <summary>More inputs than this need never be fed: those at hand, and of the list one for each load.</summary>
    public int MostInputs { get; }

    /// <summary>The leads on hand, less those that pinned feeds use.</summary>
    public LeadStock OwnedLeads { get; }

    /// <summary>The leads on hand and all those on the list that could be of use.</summary>
    public LeadStock Leads { get; }

    /// <summary>What is left of the supplies there are.</summary>
    public ImmutableArray<SupplyTerms> Owned { get; }

    /// <summary>What the supplies there are can give, less what all loads draw, in watts; negative where it does not suffice.</summary>
    public decimal OwnedSpare { get; }

    /// <summary>What the relaxed model sees of a supply on the list, of which only what is known to suit a load may feed it.</summary>
    public SupplyTerms TermsOf(Supply supply) => SupplyTerms.Of(supply, _ratings);

    /// <summary>More of a lead than this can never all be needed: each is on a feed of its own, with a load or an input on it.</summary>
    public int MostOf(LeadOffer offer) => Math.Min(offer.Available ?? int.MaxValue, _loads + MostInputs);

    /// <summary>What so many of an offer allow as leads: nothing where it is a supply.</summary>
    public LeadStock LeadsOf(Offer offer, int count) => new(offer is LeadOffer { Lead: var lead } ? [(lead, count)] : [], _loads);

    /// <summary>What a supply adds to the spare capacity, in watts.</summary>
    public decimal SpareOf(Supply supply) => _spare.WattsOf(supply);

    /// <summary>
    /// The rig with supplies and leads added, each under a name of its own. Money is not spent on what is not known to suit: of what is
    /// added only what does may feed a load.
    /// </summary>
    /// <param name="purchases">What is added.</param>
    /// <param name="limit">How long the planner may look at it.</param>
    /// <param name="isQuiet">Whether the wiring must have no finding of noise.</param>
    public (Rig Rig, PlanOptions Options) With(IEnumerable<Purchase> purchases, TimeSpan limit, bool isQuiet = false)
    {
        var names = Rig.Supplies.Items.Select(static supply => supply.Id).ToHashSet(StringComparer.Ordinal);
        var leadNames = Rig.Leads.Items.Select(static lead => lead.Id).ToHashSet(StringComparer.Ordinal);
        var added = new List<Supply>();
        var leads = new List<Lead>();
        foreach (var (offer, count) in purchases)
        {
            if (offer is LeadOffer { Lead: var lead })
            {
                // Without a count it is one, but of a straight lead as many as are wanted.
                int? said = count == 1 && lead.Type != LeadType.Straight ? null : count;
                leads.Add(lead with { Id = Free(offer.Id, leadNames), Count = said, ToBuy = true });
            }

            for (var place = 1; place <= count && offer is SupplyOffer; place++)
            {
                var name = Free(count == 1 ? offer.Id : $"{offer.Id}#{place}", names);
                added.Add(((SupplyOffer)offer).Supply with { Id = name, ToBuy = true });
            }
        }

        var only = Only is null ? null : Only.Concat(added.Select(static supply => supply.Id)).ToHashSet(StringComparer.Ordinal);
        var certain = added.Select(static supply => supply.Id).ToHashSet(StringComparer.Ordinal);
        var options = new PlanOptions
        {
            Only = only,
            Certain = certain,
            AcrossBoards = _acrossBoards,
            IsQuiet = isQuiet,
            TimeLimit = limit,
        };
        return (Rig with { Supplies = [.. Rig.Supplies, .. added], Leads = [.. Rig.Leads, .. leads] }, options);
    }

    private static string Free(string name, HashSet<string> names)
    {
        while (!names.Add(name))
            name += "+";
        return name;
    }
}
