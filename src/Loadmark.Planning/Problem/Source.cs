using System.Collections.Immutable;
using Loadmark.Core.Fits;

namespace Loadmark.Planning.Problem;

/// <summary>An outlet at a setting, as what one load may be fed from over a lead of its own.</summary>
internal sealed class Source(SourcePart part, decimal headroom)
{
    /// <summary>Every outlet at every setting.</summary>
    public static ImmutableArray<Source> All(IEnumerable<OutletGroup> outlets, decimal headroom) =>
        [.. outlets.SelectMany(group => group.Settings.Select(setting => new Source(new SourcePart(group, setting), headroom)))];

    /// <summary>The source's outlet, at one setting.</summary>
    public SourcePart Part { get; } = part;

    /// <summary>What stands at the source's plug.</summary>
    public FeedPoint Point { get; } = part.Point;

    /// <summary>What the source can give; null when nothing tells.</summary>
    public SourceLimit? Limit { get; } = part.LimitOf(headroom, 1);

    /// <summary>The voltage that draws are computed with.</summary>
    public Volts Volts => Part.Setting.Basis;

    /// <summary>The group of the source's outlet.</summary>
    public OutletGroup Group => Part.Group;

    /// <summary>What counts in the objective when a load is fed from the source; null when the load must not be.</summary>
    public LoadCost? CostOf(LoadGroup load, LeadEnds lead) =>
        Group.Bars(load) || Limit?.Bears(load, Volts) is false ? null : lead.CostOf(Point, load.Rating, Group.MustBeCertain);

    /// <summary>Whether a load alone on the source leaves less free than the headroom.</summary>
    public bool IsThin(LoadGroup load) => Limit?.IsThin(load, Volts) is true;
}
