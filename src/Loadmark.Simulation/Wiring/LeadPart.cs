using System.Collections.Immutable;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Wiring;

/// <summary>A stretch of a lead: wire with what contacts lie in it, in each conductor.</summary>
public sealed record LeadPart
{
    /// <summary>The feed whose lead it is of.</summary>
    public required WiredFeed Feed { get; init; }

    /// <summary>What the part is, in words: "long chain, tail".</summary>
    public required string Name { get; init; }

    /// <summary>Where the part's conductors are: two, or one for the joint of outlets in series.</summary>
    public required ImmutableArray<DevicePlace> Devices { get; init; }

    /// <summary>The slots of the resistance of each conductor, Ω.</summary>
    public required ImmutableArray<ParameterSlot> Slots { get; init; }

    /// <summary>The contacts in each conductor, Ω.</summary>
    public required double ContactOhms { get; init; }

    /// <summary>The wire of each conductor, Ω, as the rig has it.</summary>
    public required double WireOhms { get; init; }

    /// <summary>Length of the wire, m; 0 for contacts alone; null where the rig gives ohms instead.</summary>
    public double? Metres { get; init; }

    /// <summary>Cross-section of the wire, m²; null where the rig gives ohms instead.</summary>
    public double? SquareMetres { get; init; }

    /// <summary>Which loads the part's current goes to: the positions in its feed from this on.</summary>
    public required int FirstLoad { get; init; }

    /// <summary>Up to and without this position.</summary>
    public required int EndLoad { get; init; }
}
