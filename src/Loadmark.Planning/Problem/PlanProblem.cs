using System.Collections.Immutable;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>A rig as a plan sees it: groups of alike loads and outlets, leads and limits.</summary>
internal sealed record PlanProblem
{
    /// <summary>The rig with its pinned feeds only.</summary>
    public required WiredRig Pinned { get; init; }

    /// <summary>The loads that no pinned feed feeds.</summary>
    public required ImmutableArray<LoadGroup> Loads { get; init; }

    /// <summary>The outlets that may be used.</summary>
    public required ImmutableArray<OutletGroup> Outlets { get; init; }

    /// <summary>Every outlet at every setting.</summary>
    public required ImmutableArray<Source> Singles { get; init; }

    /// <summary>Leads that make feeds of their own kind.</summary>
    public required ImmutableArray<LeadSlot> Slots { get; init; }

    /// <summary>For each kind of slot the ids of its leads, one for each slot.</summary>
    public required ImmutableArray<ImmutableArray<string>> SlotLeads { get; init; }

    /// <summary>Leads for one load that do more than a plain one.</summary>
    public required ImmutableArray<SingleLead> SingleLeads { get; init; }

    /// <summary>For each return of a pooled problem how many returns it stands for; those that are not here stand for themselves.</summary>
    public ImmutableDictionary<string, int> ReturnCounts { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Whether outlets, leads and totals stand for several that are alike.</summary>
    public bool IsPooled { get; init; }

    /// <summary>Supplies that are alike, side by side: for each the groups of its outlets.</summary>
    public required ImmutableArray<ImmutableArray<ImmutableArray<OutletGroup>>> AlikeSupplies { get; init; }

    /// <summary>Limits of supplies and banks.</summary>
    public required ImmutableArray<TotalLimit> Totals { get; init; }

    /// <summary>For each load that is in a group, by its place in the rig, that group.</summary>
    public Dictionary<int, LoadGroup> GroupsOfLoads() =>
        Loads.SelectMany(static group => group.Members.Select(member => (member, group)))
            .ToDictionary(static pair => pair.member, static pair => pair.group);

    /// <summary>For each shared return the loads that pinned feeds put on it.</summary>
    public required ImmutableDictionary<string, ImmutableArray<WiredLoad>> PinnedOnReturn { get; init; }
}
