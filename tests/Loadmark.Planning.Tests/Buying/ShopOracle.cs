using Loadmark.Core.Gear;
using Loadmark.Core.Offers;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Tests.Oracle;

namespace Loadmark.Planning.Tests.Buying;

/// <summary>
/// Tries every basket of supplies and leads, and every wiring of each, by the rules alone. Where a basket feeds everything, so does one with more in
/// it; that is all it takes for granted.
/// </summary>
internal sealed class ShopOracle
{
    private readonly Rig _rig;
    private readonly Offer[] _offers;
    private readonly LoadRating[] _loads;
    private readonly bool _hasSeries;
    private readonly List<int[]> _feeding = [];
    private readonly decimal _owned;

    public ShopOracle(Rig rig, Offer[] offers)
    {
        (_rig, _offers) = (rig, offers);
        _loads = [.. rig.Loads.Items.Select(static load => LoadRating.Of(load))];
        var hubs = rig.Supplies.Items.Count(MustBeFed) + (offers.Any(static offer => offer is SupplyOffer { Supply: var supply } && MustBeFed(supply)) ? rig.Loads.Count : 0);
        _hasSeries = hubs > 0 || rig.Leads.Items.Any(static lead => lead.Type == LeadType.Series) || offers.Any(static offer => offer is LeadOffer { Lead.Type: LeadType.Series });
        _owned = rig.Supplies.Items.Sum(WattsOf) - _loads.Sum(static load => (load.Running?.Value.Value ?? 0) * load.Voltage.Value.Low.Value);
        var pairs = rig.Leads.Items.Count(static lead => lead.Type is LeadType.Series or LeadType.Parallel);
        // Each lead that is of use is on a feed of its own, and a pair takes one outlet more than a load alone.
        pairs += offers.Any(static offer => offer is LeadOffer { Lead.Type: LeadType.Series or LeadType.Parallel }) ? rig.Loads.Count : 0;
        foreach (var basket in Baskets(rig.Loads.Count + pairs + hubs, rig.Loads.Count + hubs).OrderBy(static basket => basket.Sum()))
        {
            if (_feeding.Exists(smaller => Holds(basket, smaller)))
                continue;
            Tried++;
            if (new BruteForce(With(basket), certain: Bought(basket)).FeedsAll())
                _feeding.Add(basket);
        }

        foreach (var basket in Baskets(rig.Loads.Count + pairs + hubs, rig.Loads.Count + hubs).OrderBy(PriceOf))
        {
            if (_feeding.Exists(smaller => Holds(basket, smaller)) && new BruteForce(With(basket), certain: Bought(basket), isQuiet: true).FeedsAll())
            {
                CheapestQuiet = PriceOf(basket);
                break;
            }
        }
    }

    /// <summary>The price of the cheapest basket with which everything is fed and the rules find no noise; null when there is none.</summary>
    public decimal? CheapestQuiet { get; }

    private static bool Holds(int[] basket, int[] smaller) => smaller.Zip(basket).All(static pair => pair.First <= pair.Second);

    public int Tried { get; private set; }

    /// <summary>The price of the cheapest basket; null when none feeds everything.</summary>
    public decimal? Cheapest => _feeding.Count == 0 ? null : _feeding.Min(PriceOf);

    /// <summary>
    /// Price, mass and spare watts of the baskets worth choosing between. Nothing can be left out of any: those found are such
    /// since smaller ones are tried before larger ones.
    /// </summary>
    public List<(decimal Price, decimal? Mass, decimal Spare)> Front(BuyOptions options, IReadOnlySet<string> beaten)
    {
        const decimal unknown = 1_000_000;
        var front = new List<(decimal Price, decimal Mass, decimal Spare)>();
        var values = _feeding.Where(basket => !basket.Where((count, offer) => count > 0 && beaten.Contains(_offers[offer].Id)).Any())
            .Select(basket => (Price: PriceOf(basket), Mass: MassOf(basket) ?? unknown, Spare: SpareOf(basket)))
            .Where(value => value.Price <= Cheapest * options.PriceRatio)
            .OrderBy(static value => value.Price).ThenBy(static value => value.Mass).ThenByDescending(static value => value.Spare);
        foreach (var value in values)
        {
            if (front.TrueForAll(before => value.Mass <= before.Mass - Math.Max(0.01m, options.MassStepGrams) || value.Spare >= before.Spare + Math.Max(1, options.SpareStep.Value)))
                front.Add(value);
        }

        return [.. front.Select(static value => (value.Price, value.Mass >= unknown ? (decimal?)null : value.Mass, Math.Max(0, value.Spare)))];
    }

    private IEnumerable<int[]> Baskets(int most, int mostLeads)
    {
        var basket = new int[_offers.Length];
        return From(0, most, mostLeads);

        IEnumerable<int[]> From(int offer, int left, int leads)
        {
            if (offer == _offers.Length)
            {
                yield return [.. basket];
                yield break;
            }

            var lead = _offers[offer] as LeadOffer;
            for (var count = 0; count <= (lead is null ? left : Math.Min(leads, lead.Available ?? leads)); count++)
            {
                basket[offer] = count;
                foreach (var one in lead is null ? From(offer + 1, left - count, leads) : From(offer + 1, left, leads - count))
                    yield return one;
            }

            basket[offer] = 0;
        }
    }

    /// <summary>What is bought must be known to suit what it feeds.</summary>
    private HashSet<string> Bought(int[] basket) =>
        basket.SelectMany((count, offer) => Enumerable.Range(0, count).Select(place => $"{_offers[offer].Id}-{place}")).ToHashSet(StringComparer.Ordinal);

    private Rig With(int[] basket)
    {
        var added = new List<Supply>();
        var leads = new List<Lead>();
        for (var offer = 0; offer < basket.Length; offer++)
        {
            for (var place = 0; place < basket[offer]; place++)
            {
                if (_offers[offer] is SupplyOffer { Supply: var supply })
                    added.Add(supply with { Id = $"{supply.Id}-{place}" });
                else if (_offers[offer] is LeadOffer { Lead: var lead })
                    leads.Add(lead with { Id = $"{lead.Id}-{place}", Count = 1 });
            }
        }

        return _rig with { Supplies = [.. _rig.Supplies, .. added], Leads = [.. _rig.Leads, .. leads] };
    }

    private decimal PriceOf(int[] basket) => basket.Select((count, offer) => count * _offers[offer].Price).Sum();

    private decimal? MassOf(int[] basket) => basket.Select((count, offer) => count == 0 ? 0 : count * _offers[offer].MassGrams).Aggregate((decimal?)0, static (sum, mass) => sum + mass);

    private decimal SpareOf(int[] basket) => Math.Floor(_owned + basket.Select((count, offer) => _offers[offer] is SupplyOffer { Supply: var supply } ? count * WattsOf(supply) : 0).Sum());

    /// <summary>What must be fed itself only passes power on.</summary>
    private static bool MustBeFed(Supply supply) => supply.Label?.Input is not null;

    private decimal WattsOf(Supply supply)
    {
        if (MustBeFed(supply))
            return 0;
        var outlets = supply.Outlets.Items.Select(outlet => Best(OutletRating.Of(supply, outlet))).OrderByDescending(static best => best.Volts);
        var (amps, watts) = (supply.Total?.Amps?.Value ?? 1000, supply.Total?.Watts?.Value ?? 1000);
        var sum = 0m;
        foreach (var (volts, most) in outlets)
        {
            var taken = Math.Min(most, amps);
            amps -= taken;
            sum += volts * taken;
        }

        return Math.Min(sum, watts);
    }

    private (decimal Volts, decimal Amps) Best(OutletRating outlet)
    {
        var best = (Volts: 0m, Amps: 0m);
        foreach (var mode in outlet.Modes.Where(static mode => mode.Volts is not null))
        {
            foreach (var load in _loads)
            {
                var printed = load.Voltage.Value;
                var top = Math.Min(mode.Volts!.Value.High.Value, printed.High.Value * 1.1m);
                var suits = (load.TakesEitherForm || !outlet.Form.IsKnown || !load.Form.IsKnown || outlet.Form.Value == load.Form.Value) && top >= Math.Max(mode.Volts.Value.Low.Value, printed.Low.Value * 0.9m);
                if (_hasSeries && outlet.Form.Value == SupplyForm.Direct)
                    (top, suits) = (mode.Volts.Value.High.Value, true);
                var amps = mode.LimitAt(new Volts(top))?.Value.Value ?? 0;
                if (suits && top * amps > best.Volts * best.Amps)
                    best = (top, amps);
            }
        }

        return best;
    }
}
