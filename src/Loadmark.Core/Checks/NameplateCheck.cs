using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>Checks a rig as wired against every rule on nameplates; rules that need a circuit come with its analysis.</summary>
public static class NameplateCheck
{
    /// <summary>Checks a rig. The same rig gives the same result.</summary>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    public static CheckResult Of(Rig rig) => Of(WiredRig.Of(rig));

    /// <summary>Checks a rig that has been looked up already.</summary>
    public static CheckResult Of(WiredRig rig)
    {
        var report = new Report();
        var subject = NameplateCase.Of(rig);
        foreach (var rule in RuleBook.All)
            rule.Judge(subject, report, CancellationToken.None);

        return new CheckResult
        {
            Rig = rig.Rig.Name,
            NothingIsFed = rig.Feeds.Count == 0,
            Findings = report.Findings(),
            Untold = report.Untold(),
            Outlets = Loadings(rig),
            Totals = Totals(subject.Budgets),
            Fitting = FittingFigures.Of(subject),
            TakenForGranted = [.. subject.TakenForGranted.Conventions],
            ToBuy = [.. rig.Rig.ToBuy],
            Headroom = rig.Rig.HeadroomInForce,
            HeadroomIsDefault = rig.Rig.Headroom is null,
        };
    }

    private static ValueList<TotalLoading> Totals(Budgets budgets)
    {
        var totals = ImmutableArray.CreateBuilder<TotalLoading>();
        foreach (var budget in budgets.Banks.Concat(budgets.Supplies))
        {
            if (budget.Limit is { } limit)
                totals.Add(
                    new TotalLoading(
                        budget.Subjects[0],
                        budget.Holder,
                        Total(budget, limit),
                        Total(budget, budget.Run),
                        Total(budget, budget.Start),
                        budget.IsWhole));
        }

        return new ValueList<TotalLoading>(totals.ToImmutable());
    }

    private static SupplyTotal Total(Budget budget, decimal amount) =>
        budget.InWatts ? new SupplyTotal(null, new Watts(amount)) : new SupplyTotal(new Amps(amount), null);

    private static ValueList<OutletLoading> Loadings(WiredRig rig)
    {
        var loadings = ImmutableArray.CreateBuilder<OutletLoading>(rig.Outlets.Count);
        foreach (var outlet in rig.Outlets)
        {
            loadings.Add(new OutletLoading(
                outlet.Rating.Reference,
                outlet.Volts,
                outlet.Limit?.Value,
                outlet.DrawIsKnown ? outlet.Run : null,
                outlet.DrawIsKnown ? outlet.Start : null,
                LoadsOf(outlet))
            {
                DrawIsAssumed = outlet.Feeds.Any(static feed => feed.Loads.Any(static load => load.Rating.Running is { IsAssumed: true })),
                Surge = outlet.Rating.Outlet.Surge?.Current,
                GivesNothing = rig.DeadSupplies.Contains(outlet.Rating.Supply.Id),
            });
        }

        return new ValueList<OutletLoading>(loadings.MoveToImmutable());
    }

    private static ValueList<string> LoadsOf(WiredOutlet outlet)
    {
        var count = 0;
        for (var place = 0; place < outlet.Feeds.Count; place++)
            count += outlet.Feeds[place].Loads.Length;
        if (count == 0)
            return [];

        var ids = ImmutableArray.CreateBuilder<string>(count);
        for (var place = 0; place < outlet.Feeds.Count; place++)
        {
            foreach (var load in outlet.Feeds[place].Loads)
                ids.Add(load.Id);
        }

        return new ValueList<string>(ids.MoveToImmutable());
    }
}
