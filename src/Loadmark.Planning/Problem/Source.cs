using System.Collections.Immutable;

namespace Loadmark.Planning.Problem;

/// <summary>An outlet at a setting, as what one load may be fed from over a lead of its own.</summary>
internal sealed class Source(SourcePart part, decimal headroom)
{
    /// <summary>Every outlet at every setting.</summary>
    public static ImmutableArray<Source> All(IEnumerable<OutletGroup> outlets, decimal headroom) =>
        [.. outlets.SelectMany(group => group.Settings.Select(setting => new Source(new SourcePart(group, setting), headroom)))];

    /// <summary>The outlet and its setting.</summary>
    public SourcePart Part { get; } = part;

    /// <summary>What stands at its plug.</summary>
    public FeedPoint Point { get; } = part.Point;

    /// <summary>What it can give; null when nothing tells.</summary>
    public SourceLimit? Limit { get; } = part.LimitOf(headroom, 1);

    /// <summary>Its outlet's group.</summary>
    public OutletGroup Group => Part.Group;

    /// <summary>How many findings of margin a load gives on it for voltage and plug; null when it must not be put on it.</summary>
    public int? MarginsOf(LoadGroup load, LeadEnds lead) =>
        Limit?.Bears(load, Point.Volts) is false ? null : Point.MarginsOf(load, lead);

    /// <summary>Whether a load alone on it leaves less free than the headroom.</summary>
    public bool IsThin(LoadGroup load) => Limit?.IsThin(load, Point.Volts) is true;
}
