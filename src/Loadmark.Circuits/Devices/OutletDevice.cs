namespace Loadmark.Circuits.Devices;

/// <summary>An outlet of a supply: an EMF behind a resistance, with soft start and a limit. It gives current and never takes any.</summary>
/// <remarks>
/// In force is the least of (E − v) / R and the limit, and never less than 0; 1 nS keeps its node defined while it is off.
/// A resettable fuse is a device of its own, in series. See docs/theory/outlets.md.
/// </remarks>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of its positive terminal.</param>
/// <param name="Minus">Node of its return.</param>
/// <param name="Volts">EMF when started, V, 0 or more.</param>
/// <param name="SourceOhms">Source resistance, over 0 Ω.</param>
public sealed record OutletDevice(string Name, string Plus, string Minus, double Volts, double SourceOhms) : Device(Name, Plus, Minus)
{
    /// <summary>Time the EMF takes to rise from 0 in a straight line at each start, s, 0 or more (0 jumps).</summary>
    public double SoftStartSeconds { get; init; }

    /// <summary>When the outlet starts to rise, s, 0 or more.</summary>
    public double DelaySeconds { get; init; }

    /// <summary>How the outlet meets an overload.</summary>
    public OverloadBehaviour Overload { get; init; }

    /// <summary>The limit of the outlet's current, A, over 0; without meaning where there is no limit.</summary>
    public double LimitAmps { get; init; } = double.PositiveInfinity;

    /// <summary>For foldback: current into a short circuit, A, over 0 and at most the limit.</summary>
    public double ShortAmps { get; init; }

    /// <summary>For hiccup: how long it holds the limit before it switches off, s, 0 or more.</summary>
    public double TripSeconds { get; init; }

    /// <summary>For hiccup: how long it stays off before it tries again, s, over 0.</summary>
    public double OffSeconds { get; init; }
}
