using Loadmark.Circuits.Networks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Wiring;

/// <summary>An outlet that feeds something, in the circuit.</summary>
public sealed record OutletBranch
{
    /// <summary>The outlet whose branch this is.</summary>
    public required WiredOutlet Outlet { get; init; }

    /// <summary>Where the outlet's source is in the circuit.</summary>
    public required DevicePlace Device { get; init; }

    /// <summary>Where the leads take from; behind the fuse where it has one.</summary>
    public required Terminals Terminals { get; init; }

    /// <summary>The outlet's EMF, V.</summary>
    public required double Volts { get; init; }

    /// <summary>The outlet's limit, A; infinite where none is known.</summary>
    public required double LimitAmps { get; init; }

    /// <summary>How the outlet meets an overload; null for a plain source behind its resistance.</summary>
    public required OverloadWay? Overload { get; init; }

    /// <summary>The slot of the outlet's EMF, V.</summary>
    public required ParameterSlot VoltsSlot { get; init; }

    /// <summary>The slot of the outlet's limit, A; without effect where <see cref="Overload"/> is a fuse or null.</summary>
    public required ParameterSlot LimitSlot { get; init; }

    /// <summary>Where the outlet's fuse is; null where it has none.</summary>
    public DevicePlace? Fuse { get; init; }

    /// <summary>
    /// What the outlet bears for a moment, A, and for how long, s; null where nothing is stated. A time not stated is infinite.
    /// </summary>
    public (double Amps, double Seconds)? Surge { get; init; }

    /// <summary>The outlet's name: <c>brick/5</c>.</summary>
    public string Name => Outlet.Name;
}
