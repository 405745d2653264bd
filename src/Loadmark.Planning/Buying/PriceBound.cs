using Google.OrTools.LinearSolver;

namespace Loadmark.Planning.Buying;

/// <summary>
/// What must at least be paid for what a basket still lacks, when only the offers from some place in an order on may be added. The
/// relaxation that lets parts of supplies be bought is solved beforehand for each such place; its dual values price whatever is
/// lacking later (weak duality: any values that make no offer worth more than its price give a bound).
/// </summary>
internal sealed class PriceBound
{
    /// <summary>Covers the rounding of sums of doubles; bounds are rounded up to whole units after it is taken off.</summary>
    private const double Rounding = 1e-6;

    private readonly List<CoverCut> _cuts;
    private readonly long[] _prices;
    private readonly double[][] _duals;
    private readonly double[][] _ratios;

    /// <summary>Prices what is lacking.</summary>
    /// <param name="cuts">What a basket must have.</param>
    /// <param name="prices">The prices of the offers.</param>
    public PriceBound(List<CoverCut> cuts, long[] prices)
    {
        (_cuts, _prices) = (cuts, prices);
        var all = Duals([.. Enumerable.Range(0, prices.Length)]) ?? new double[cuts.Count];

        // Offers worth most of what is lacking come first: without them little is left to try.
        Order =
            [.. Enumerable.Range(0, prices.Length).OrderByDescending(offer => Worth(all, offer)).ThenByDescending(offer => prices[offer])];
        _duals = new double[Order.Length][];
        _ratios = new double[Order.Length + 1][];
        _ratios[^1] = [.. cuts.Select(static _ => double.PositiveInfinity)];
        for (var place = 0; place < Order.Length; place++)
            _duals[place] = place == 0 ? Scaled(all, Order) : Duals(Order[place..]) ?? _duals[place - 1];
        for (var place = Order.Length - 1; place >= 0; place--)
            _ratios[place] = [.. cuts.Select((cut, index) => Math.Min(_ratios[place + 1][index], Ratio(cut, Order[place])))];
    }

    /// <summary>The offers in the order in which they are tried.</summary>
    public int[] Order { get; }

    /// <summary>What each basket lacks when it is empty.</summary>
    public long[] Needs => [.. _cuts.Select(static cut => cut.Need)];

    /// <summary>Takes one of an offer off what is lacking.</summary>
    public void Take(long[] lacking, int offer)
    {
        for (var cut = 0; cut < lacking.Length; cut++)
            lacking[cut] -= _cuts[cut].Worths[offer];
    }

    /// <summary>The least that completes a basket, in units of price; null where nothing does.</summary>
    /// <param name="lacking">What is lacking; not positive where nothing is.</param>
    /// <param name="without">An offer one more of which is taken first; null for none.</param>
    /// <param name="place">Only offers from this place in the order on are added.</param>
    public long? Least(long[] lacking, int? without, int place)
    {
        var (bound, sum) = (0.0, 0.0);
        for (var cut = 0; cut < lacking.Length; cut++)
        {
            var rest = lacking[cut] - (without is { } offer ? _cuts[cut].Worths[offer] : 0);
            if (rest <= 0)
                continue;
            if (double.IsPositiveInfinity(_ratios[place][cut]))
                return null;
            bound = Math.Max(bound, rest * _ratios[place][cut]);
            if (place < _duals.Length)
                sum += rest * _duals[place][cut];
        }

        return (long)Math.Ceiling(Math.Max(bound, sum) * (1 - Rounding) - Rounding);
    }

    private double Ratio(CoverCut cut, int offer) =>
        cut.Worths[offer] == 0 ? double.PositiveInfinity : (double)_prices[offer] / cut.Worths[offer];

    private double Worth(double[] duals, int offer) => duals.Select((dual, cut) => dual * _cuts[cut].Worths[offer]).Sum();

    /// <summary>The dual values of the relaxation with some offers; null where these do not suffice.</summary>
    private double[]? Duals(int[] offers)
    {
        if (_cuts.Exists(cut => Array.TrueForAll(offers, offer => cut.Worths[offer] == 0)))
            return null;
        using var solver = Solver.CreateSolver("GLOP");
        var objective = solver.Objective();
        var counts = new Variable[offers.Length];
        for (var place = 0; place < offers.Length; place++)
        {
            counts[place] = solver.MakeNumVar(0, double.PositiveInfinity, "");
            objective.SetCoefficient(counts[place], _prices[offers[place]]);
        }

        objective.SetMinimization();
        var rows = new List<Constraint>();
        foreach (var cut in _cuts)
        {
            var row = solver.MakeConstraint(1, double.PositiveInfinity);
            for (var place = 0; place < offers.Length; place++)
                row.SetCoefficient(counts[place], (double)cut.Worths[offers[place]] / cut.Need);
            rows.Add(row);
        }

        return solver.Solve() == Solver.ResultStatus.OPTIMAL
            ? Scaled([.. rows.Select((row, cut) => Math.Max(0, row.DualValue()) / _cuts[cut].Need)], offers)
            : null;
    }

    /// <summary>Dual values made smaller until no offer is worth more than its price.</summary>
    private double[] Scaled(double[] duals, int[] offers)
    {
        var scale = 1.0;
        foreach (var offer in offers)
        {
            var worth = Worth(duals, offer);
            if (worth > _prices[offer])
                scale = Math.Min(scale, _prices[offer] / worth);
        }

        return [.. duals.Select(dual => dual * scale)];
    }
}
