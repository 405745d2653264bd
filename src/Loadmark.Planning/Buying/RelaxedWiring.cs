using Google.OrTools.Sat;
using Loadmark.Core.Gear;

namespace Loadmark.Planning.Buying;

/// <summary>
/// The relaxed wiring of the loads on the supplies there are and those that may be bought: how many loads of each kind are on the
/// outlets of each kind. Draws are rounded down and limits up, so that nothing the rules allow is lost.
/// </summary>
internal sealed class RelaxedWiring(BuyProblem problem, OfferScreen offers, CpModel model, IntVar[] counts)
{
    private const decimal Micro = 1_000_000m;
    private readonly List<IntVar>[] _fed = [.. problem.Demands.Select(static _ => new List<IntVar>())];
    private readonly List<IntVar> _reversed = [];
    private readonly List<IntVar> _extra = [];

    /// <summary>Adds it to the model.</summary>
    public void Build()
    {
        foreach (var owned in problem.Owned)
            Add(owned, LinearExpr.Constant(1), 1);
        for (var offer = 0; offer < counts.Length; offer++)
            Add(offers.Useful[offer].Terms, counts[offer], offers.Useful[offer].Most);

        AddPairs();
        for (var demand = 0; demand < problem.Demands.Count; demand++)
            model.Add(LinearExpr.Sum(_fed[demand]) >= problem.Demands[demand].Count);
        model.Add(LinearExpr.Sum(_reversed) <= problem.Leads.Reversing);
        model.Add(LinearExpr.Sum(_extra) <= problem.Leads.Extra);
    }

    private void Add(SupplyTerms supply, LinearExpr count, int most)
    {
        var loads = new List<(IntVar Fed, decimal Amps, decimal Watts)>();
        foreach (var kind in supply.Kinds)
            AddKind(kind, count, most, loads);
        if (supply.Amps is { } amps)
            Keep(loads.Select(static load => (load.Fed, load.Amps)), amps, count);
        if (supply.Watts is { } watts)
            Keep(loads.Select(static load => (load.Fed, load.Watts)), watts, count);
    }

    private void AddKind(OutletKind kind, LinearExpr count, int most, List<(IntVar Fed, decimal Amps, decimal Watts)> loads)
    {
        var onKind = new List<(IntVar Fed, decimal Run)>();
        for (var index = 0; index < problem.Demands.Count; index++)
        {
            var demand = problem.Demands[index];
            if (kind.FitOf(demand.Rating, problem.Leads) is not { } fit)
                continue;
            var fed = model.NewIntVar(0, Math.Min(demand.Count, (long)kind.Count * most * problem.Leads.MostPlugs), "");
            var draw = Draw.Least(demand.Rating, new Volts(fit.LeastVolts));
            _fed[index].Add(fed);
            onKind.Add((fed, draw.Run));
            loads.Add((fed, draw.Start, draw.Start * fit.LeastVolts));
            if (fit.Reverses)
                _reversed.Add(fed);
        }

        if (onKind.Count == 0)
            return;
        var places = count * kind.Count;
        if (problem.Leads.Extra == 0 || kind.MostAmps is not { } amps)
        {
            model.Add(LinearExpr.Sum(onKind.Select(static load => load.Fed)) <= places);
            return;
        }

        var extra = model.NewIntVar(0, problem.Leads.Extra, "");
        _extra.Add(extra);
        model.Add(extra <= places * (problem.Leads.MostPlugs - 1));
        model.Add(LinearExpr.Sum(onKind.Select(static load => load.Fed)) <= places + extra);
        Keep(onKind, amps, places);
    }

    /// <summary>Demands that draws keep a limit that there is so many times.</summary>
    private void Keep(IEnumerable<(IntVar Fed, decimal Draw)> loads, decimal limit, LinearExpr times)
    {
        var all = loads.ToList();
        if (all.Count > 0)
            model.Add(LinearExpr.WeightedSum(all.Select(static load => load.Fed), all.Select(static load => (long)decimal.Floor(load.Draw * Micro))) <= times * (long)decimal.Ceiling(limit * Micro));
    }

    /// <summary>Loads on outlets in series or side by side: as many as those leads have plugs, where the voltages can be right.</summary>
    private void AddPairs()
    {
        if (problem.Leads.PairLeads == 0)
            return;
        var kinds = problem.Owned.Concat(offers.Useful.Select(static offer => offer.Terms)).SelectMany(static supply => supply.Kinds)
            .Where(static kind => kind.Rating.Form.Value == SupplyForm.Direct).ToList();
        var paired = new List<IntVar>();
        for (var index = 0; index < problem.Demands.Count; index++)
        {
            var demand = problem.Demands[index];
            var suits = VoltageSpan.Of(demand.Rating);

            // None of these leads exchanges centre and sleeve.
            var spans = kinds.Where(kind => kind.Rating.Polarity.Value == demand.Rating.Polarity.Value).SelectMany(static kind => kind.Rating.Modes)
                .Select(static mode => mode.Volts).OfType<QuantityRange<Volt>>().Select(static range => new VoltageSpan(range.Low.Value, range.High.Value)).Distinct().ToList();
            var inSeries = problem.Leads.Series > 0 && spans.Exists(one => spans.Exists(other => suits.Overlap(one.Low + other.Low, one.High + other.High) is not null));
            var sideBySide = problem.Leads.Parallel > 0 && spans.Exists(one => suits.Overlap(one.Low, one.High) is not null);
            if (!inSeries && !sideBySide)
                continue;
            var fed = model.NewIntVar(0, demand.Count, "");
            _fed[index].Add(fed);
            paired.Add(fed);
        }

        model.Add(LinearExpr.Sum(paired) <= problem.Leads.Series + problem.Leads.Parallel);
    }
}
