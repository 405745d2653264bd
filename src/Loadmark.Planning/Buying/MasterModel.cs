using Google.OrTools.Sat;

namespace Loadmark.Planning.Buying;

/// <summary>
/// The choice of supplies without their wiring: of that it knows only what every combination that feeds everything must have, so that
/// no such combination is cheaper than its best one. What it allows too much is cut off when the planner has found it out. The
/// answers are taken in the order of price.
/// </summary>
internal sealed class MasterModel
{
    private const long Milli = 1000;
    private readonly OfferScreen _offers;
    private readonly Scales _scales;
    private readonly SearchClock _clock;
    private readonly CancellationToken _cancellation;
    private readonly CpModel _model = new();
    private readonly IntVar[] _counts;
    private readonly IntVar _price;
    private readonly IntVar _mass;
    private readonly IntVar _spare;

    /// <summary>Builds the model.</summary>
    public MasterModel(BuyProblem problem, OfferScreen offers, Scales scales, SearchClock clock, CancellationToken cancellation)
    {
        (_offers, _scales, _clock, _cancellation) = (offers, scales, clock, cancellation);
        _counts = [.. offers.Useful.Select((offer, index) => _model.NewIntVar(0, offer.Most, $"n{index}"))];
        foreach (var cut in new CoverCuts(problem, offers).All())
            _model.Add(LinearExpr.WeightedSum(_counts, cut.Worths) >= cut.Need);
        _price = _model.NewIntVar(0, scales.MostPrice, "price");
        _model.Add(_price == LinearExpr.WeightedSum(_counts, scales.Prices));
        _mass = _model.NewIntVar(0, scales.UnknownMass, "mass");
        _model.Add(_mass >= LinearExpr.WeightedSum(_counts, scales.Masses.Select(static mass => mass ?? 0)));
        for (var offer = 0; offer < _counts.Length; offer++)
        {
            if (scales.Masses[offer] is not null)
                continue;
            var isBought = _model.NewBoolVar("");
            _model.Add(_counts[offer] <= offers.Useful[offer].Most * isBought);
            _model.Add(_mass >= scales.UnknownMass * isBought);
        }

        var least = Scales.WholeWatts(scales.OwnedMilliwatts);
        var most = Scales.WholeWatts(scales.MostMilliwatts);
        _spare = _model.NewIntVar(least, most, "spare");
        _model.Add(_spare * Milli <= LinearExpr.WeightedSum(_counts, scales.Milliwatts) + scales.OwnedMilliwatts);
    }

    /// <summary>How often the solver ran.</summary>
    public int Runs { get; private set; }

    /// <summary>The cheapest basket left.</summary>
    /// <returns>The basket, null where there is none left or none was found; and whether the time sufficed to prove that.</returns>
    public (Basket? Basket, bool IsProven) Cheapest() => Solve(_price);

    /// <summary>The lightest basket left at a price.</summary>
    /// <returns>As of <see cref="Cheapest"/>.</returns>
    public (Basket? Basket, bool IsProven) Lightest(long price)
    {
        using var held = new HeldValue(_model, _price, price);
        return Solve(_mass);
    }

    /// <summary>The basket left at a price and a mass that has most to spare.</summary>
    /// <returns>As of <see cref="Cheapest"/>.</returns>
    public (Basket? Basket, bool IsProven) MostToSpare(long price, long mass)
    {
        using var held = new HeldValue(_model, _price, price);
        using var heldToo = new HeldValue(_model, _mass, mass);
        return Solve(-_spare);
    }

    private (Basket? Basket, bool IsProven) Solve(LinearExpr least)
    {
        if (_clock.IsOver)
            return (null, false);
        Runs++;
        _model.Minimize(least);
        using var solver = new CpSolver();
        solver.StringParameters = FormattableString.Invariant($"num_workers:1 random_seed:1 cp_model_presolve:false max_time_in_seconds:{_clock.Left.TotalSeconds:0.######}");
        using var asking = new Timer(_ => solver.StopSearch(), null, Timeout.Infinite, Timeout.Infinite);
        using var registration = _cancellation.Register(() => asking.Change(0, 20));
        var status = solver.Solve(_model);
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible =>
                (new Basket([.. _counts.Select(count => (int)solver.Value(count))]), status == CpSolverStatus.Optimal),
            CpSolverStatus.Infeasible => (null, true),
            _ => (null, false),
        };
    }

    /// <summary>
    /// Leaves out a basket that does not feed everything, and all that it can stand in for. A basket that is left has, for some set
    /// of the offers in the first, more supplies of which only these can stand in than the first has of the set (Hall's theorem).
    /// </summary>
    public void LeaveOutUpTo(Basket failing)
    {
        var kinds = failing.Kinds.ToArray();
        if (kinds.Length > 10)
        {
            _model.AddBoolOr(Enumerable.Range(0, _counts.Length).Where(offer => failing.Counts[offer] < _offers.Useful[offer].Most).Select(offer => AtLeast(_counts[offer], failing.Counts[offer] + 1)));
            return;
        }

        var ways = new List<ILiteral>();
        for (var set = 0; set < 1 << kinds.Length; set++)
        {
            var members = kinds.Where((_, place) => (set >> place & 1) == 1).ToHashSet();
            var bound = Enumerable.Range(0, _counts.Length).Where(offer => kinds.All(kind => !_offers.Order[kind, offer] || members.Contains(kind))).ToArray();
            var more = members.Sum(member => failing.Counts[member]) + 1;
            if (bound.Sum(offer => _offers.Useful[offer].Most) >= more)
                ways.Add(AtLeast(LinearExpr.Sum(bound.Select(offer => _counts[offer])), more));
        }

        _model.AddBoolOr(ways);
    }

    /// <summary>Leaves out a basket that feeds everything, and all that hold it and more: there a supply could be left out.</summary>
    public void LeaveOutFrom(Basket feeding) => _model.AddBoolOr(feeding.Kinds.Select(offer => AtMost(_counts[offer], feeding.Counts[offer] - 1)));

    /// <summary>Leaves out all that are not lighter than a basket, nor have more to spare, by at least a step.</summary>
    public void LeaveOutAlike(PricedBasket one) => _model.AddBoolOr([AtMost(_mass, one.Mass - _scales.MassStep), AtLeast(_spare, one.Spare + _scales.SpareStep)]);

    /// <summary>Leaves out all that cost more.</summary>
    public void LeaveOutOver(long price) => _model.Add(_price <= price);

    private BoolVar AtLeast(LinearExpr sum, long least)
    {
        var holds = _model.NewBoolVar("");
        _model.Add(sum >= least).OnlyEnforceIf(holds);
        return holds;
    }

    private BoolVar AtMost(LinearExpr sum, long most)
    {
        var holds = _model.NewBoolVar("");
        _model.Add(sum <= most).OnlyEnforceIf(holds);
        return holds;
    }
}
