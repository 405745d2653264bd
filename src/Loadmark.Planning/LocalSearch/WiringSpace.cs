using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>All that wirings of a problem are made of, looked up once: loads one by one, leads by kind, and the sites of feeds.</summary>
internal sealed class WiringSpace
{
    private readonly int[][] _kinds;
    private readonly Placement?[] _homes;

    /// <summary>Looks a problem up.</summary>
    public WiringSpace(PlanProblem problem)
    {
        Problem = problem;
        Kinds = LeadKind.Of(problem);
        Ends = [.. Kinds.Select(static kind => kind.Ends).Distinct()];
        Returns = [.. problem.Outlets.Select(static group => group.SharedReturn).OfType<string>().Distinct(StringComparer.Ordinal)];
        Loads = [.. problem.Loads.SelectMany(static group => Enumerable.Repeat(group, group.Count))];
        _kinds = [.. Enum.GetValues<Joint>().SelectMany(joined => Ends.Select(ends => Enumerable.Range(0, Kinds.Length)
            .Where(kind => Kinds[kind].Joined == joined && Kinds[kind].Ends == ends).OrderBy(kind => Kinds[kind].Plugs).ToArray()))];
        Sites = [.. new FeedSiteBuilder(this).Build()];
        Placements = [.. problem.Loads.Select(BerthsOf)];
        _homes = [.. problem.Loads.Select(HomeAmong)];
    }

    /// <summary>The problem whose wirings these are.</summary>
    public PlanProblem Problem { get; }

    /// <summary>The kinds of leads, the plain one first.</summary>
    public ImmutableArray<LeadKind> Kinds { get; }

    /// <summary>What leads do to polarity and plug, nothing first.</summary>
    public ImmutableArray<LeadEnds> Ends { get; }

    /// <summary>The returns that outlets share.</summary>
    public ImmutableArray<string> Returns { get; }

    /// <summary>Every load, as the group it is of.</summary>
    public ImmutableArray<LoadGroup> Loads { get; }

    /// <summary>The sites of feeds.</summary>
    public ImmutableArray<FeedSite> Sites { get; }

    /// <summary>For each group of loads where one may be fed, and over leads that do what.</summary>
    public ImmutableArray<ImmutableArray<Placement>> Placements { get; }

    /// <summary>The kinds of leads for a feed, those with the fewest plugs first.</summary>
    public int[] KindsFor(Joint joined, int ends) => _kinds[((int)joined * Ends.Length) + ends];

    /// <summary>Where the loads of a group are plugged in now; null where none is, or none may stay.</summary>
    public Placement? HomeOf(LoadGroup load) => _homes[load.Index];

    private Placement? HomeAmong(LoadGroup load)
    {
        foreach (var placement in Placements[load.Index])
        {
            if (placement.FeedSite.HomeKindOf(load.Index) is >= 0 and var kind && Ends[placement.Ends] == Kinds[kind].Ends)
                return placement;
        }

        return null;
    }

    private ImmutableArray<Placement> BerthsOf(LoadGroup load)
    {
        var placements = ImmutableArray.CreateBuilder<Placement>();
        foreach (var site in Sites)
        {
            for (var ends = 0; ends < Ends.Length; ends++)
            {
                if (KindsFor(site.Joined, ends).Length > 0 && site.CostOf(load.Index, ends) is not null
                    && site.Legs.All(leg => leg.Limit?.Bears(load, site.Volts) is not false))
                    placements.Add(new Placement(site, ends));
            }
        }

        return placements.ToImmutable();
    }
}
