using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Explaining;

namespace Loadmark.Planning.Buying;

/// <summary>Finds loads that nothing on the list, and nothing there is, can feed even alone.</summary>
internal sealed class UnfeedableLoads(
    BuyProblem problem, OfferScreen offers, TimeSpan checkLimit, SearchClock clock, CancellationToken cancellation)
{
    /// <summary>How often the planner was asked.</summary>
    public int Checks { get; private set; }

    /// <summary>The tags of the loads that nothing on the list feeds, in the order of the rig.</summary>
    public List<string> Loads()
    {
        var unfeedable = problem.Demands.Where(IsHopeless).SelectMany(static demand => demand.Loads).ToHashSet(StringComparer.Ordinal);
        return [.. problem.Rig.Loads.Items.Select(static load => load.Id).Where(unfeedable.Contains)];
    }

    /// <summary>The tags of the loads that no outlet feeds over a straight lead.</summary>
    public List<string> NeedLeads()
    {
        var kinds = problem.Owned.Concat(offers.Useful.Select(static offer => offer.Terms)).SelectMany(static supply => supply.Kinds)
            .ToList();
        var needing = problem.Demands.Where(
            demand => !kinds.Exists(kind => kind.FitOf(demand.Rating, problem.Leads) is { Reverses: false }))
            .SelectMany(static demand => demand.Loads).ToHashSet(StringComparer.Ordinal);
        return [.. problem.Rig.Loads.Items.Select(static load => load.Id).Where(needing.Contains)];
    }

    private bool IsHopeless(Demand demand)
    {
        var load = problem.Rig.Loads.Items.First(load => load.Id == demand.Loads[0]);
        var fitting = offers.Useful.Where(offer => offer.Terms.Kinds.Any(kind => kind.FitOf(demand.Rating, problem.Leads) is not null))
            .ToList();
        if (fitting.Exists(offer => offer.Offer is SupplyOffer { Supply: var supply } && !SupplyInput.MustBeFed(supply)
            && SuitableOutlets.For(problem.Rig with { Supplies = [supply] }, load, null, mustBeCertain: true).Count > 0))
            return false;

        // Whatever the rules say of single outlets, there are leads to reverse and to join, and supplies that others feed; the planner
        // knows them all.
        var all = problem.Leads.PairLeads > 0 || problem.Inputs.Length > 0 ? offers.Useful
            : [.. fitting, .. offers.Useful.Where(static offer => offer.Offer is LeadOffer)];
        var each = problem.Leads.PairLeads > 0 ? 2 : 1;
        var (rig, options) = problem.With(
            all.Select(offer => new Purchase(offer.Offer, offer.Offer is SupplyOffer ? each : 1)), clock.AtMost(checkLimit));
        Checks++;
        return !clock.IsOver && RigPlanner.CanFeedAll(
            rig with { Loads = [load], Wired = (ValueList<Feed>)[] }, options, cancellation) == false;
    }
}
