using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>Where a feed may begin, its site: one outlet of a group at a setting, or two that are joined.</summary>
internal sealed class FeedSite
{
    private readonly FeedClass _from;
    private readonly LoadCost?[]?[] _costs;
    private readonly Occupant[]?[] _occupants;
    private readonly IReadOnlyList<LoadGroup> _loads;
    private readonly IReadOnlyList<LeadEnds> _ends;
    private readonly int[]? _homeKinds;

    /// <summary>Describes the site that one or more outlets make.</summary>
    /// <param name="from">The class of sources it is of.</param>
    /// <param name="parts">Its outlets, one for each leg.</param>
    /// <param name="limits">What they can give.</param>
    /// <param name="problem">The problem.</param>
    /// <param name="returns">The shared returns.</param>
    /// <param name="ends">All that leads do to polarity and plug.</param>
    /// <param name="kinds">The kinds of leads.</param>
    /// <param name="draws">What the loads draw.</param>
    public FeedSite(
        FeedClass from,
        SourcePart[] parts,
        SourceLimit?[] limits,
        PlanProblem problem,
        ImmutableArray<string> returns,
        IReadOnlyList<LeadEnds> ends,
        IReadOnlyList<LeadKind> kinds,
        DrawTable draws)
    {
        _loads = problem.Loads;
        _ends = ends;
        _from = from;
        _costs = new LoadCost?[]?[ends.Count];
        _occupants = new Occupant[]?[ends.Count];
        Joined = from.Joined;
        Return = from.SharedReturn is { } shared ? returns.IndexOf(shared) : -1;
        OutletsALeg = from.OutletsALeg;
        Legs =
            [.. parts.Zip(limits, (part, limit) => new SiteOutlet(part, limit, limit is null ? null : draws.Against(limit.Scale, Volts)))];
        _homeKinds = problem.Homes is null ? null : HomeKinds(parts, kinds);
        Capacity = parts.Sum(static part => part.Group.Capacity) * OutletsALeg;
        AllowsSeveral = limits.All(static limit => limit is not null);
        Totals = [.. Enumerable.Range(0, problem.Totals.Length)
            .SelectMany(index => parts.Where(part => problem.Totals[index].Covers(part.Group))
            .Select(part => (index, draws.Against(problem.Totals[index].FactorAt(part.Setting.Basis), Volts))))];
    }

    /// <summary>How the site's outlets are joined.</summary>
    public Joint Joined { get; }

    /// <summary>The voltage that draws are computed with.</summary>
    public Volts Volts => _from.Volts;

    /// <summary>The place of the return it shares with others; -1 when it has its own.</summary>
    public int Return { get; }

    /// <summary>How many outlets of the site's group each leg takes.</summary>
    public int OutletsALeg { get; }

    /// <summary>The site's outlets: one, or for outlets in series two.</summary>
    public SiteOutlet[] Legs { get; }

    /// <summary>The largest limits of the site's outlets, in millionths of an amp.</summary>
    public long Capacity { get; }

    /// <summary>Whether the site may feed several loads: every limit is known.</summary>
    public bool AllowsSeveral { get; }

    /// <summary>The totals the site counts against, once for each leg, and what each group of loads counts there.</summary>
    public (int Total, TotalDraws Draws)[] Totals { get; }

    /// <summary>What counts in the objective when a load is fed from the site; null where the load must not be.</summary>
    /// <param name="load">The place of the load's group.</param>
    /// <param name="ends">The place of what the lead does.</param>
    public LoadCost? CostOf(int load, int ends) =>
        (_costs[ends] ??= [.. _loads.Select(group => _from.CostOf(group, _ends[ends]))])[load];

    /// <summary>Whether something is plugged in here now.</summary>
    public bool IsHome => _homeKinds is not null;

    /// <summary>The kind of lead over which a load is plugged in here now; -1 where it is not.</summary>
    /// <param name="load">The place of the load's group.</param>
    public int HomeKindOf(int load) => _homeKinds?[load] ?? -1;

    /// <summary>What a load that is fed from here is to others that share the site's return.</summary>
    /// <param name="load">The place of the load's group.</param>
    /// <param name="ends">The place of what the lead does.</param>
    public Occupant OccupantOf(int load, int ends) =>
        (_occupants[ends] ??= [.. _loads.Select(group => group.OccupantAt(_from.Point, _ends[ends].Reverses))])[load];

    private int[]? HomeKinds(SourcePart[] parts, IReadOnlyList<LeadKind> kinds)
    {
        var homes = new int[_loads.Count];
        Array.Fill(homes, -1);
        foreach (var load in _loads.Where(static load => load.Home is not null))
        {
            for (var kind = 0; kind < kinds.Count; kind++)
            {
                if (kinds[kind].Joined == Joined && !load.IsMovedBy(Joined, parts, kinds[kind].Ids))
                    homes[load.Index] = kind;
            }
        }

        return Array.TrueForAll(homes, static kind => kind < 0) ? null : homes;
    }
}
