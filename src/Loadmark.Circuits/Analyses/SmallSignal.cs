using System.Numerics;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>
/// How a network passes a small sinusoidal signal around its steady state. All amplitudes are complex; phase 0 is that of the sources.
/// </summary>
/// <remarks>Solve the operating point first; this reads its slopes.</remarks>
public sealed class SmallSignal
{
    private readonly Network _network;
    private readonly SmallSignalSystem _system;

    /// <summary>Prepares the analysis of a network.</summary>
    /// <param name="network">The network.</param>
    public SmallSignal(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _network = network;
        _system = new SmallSignalSystem(network.Pattern);
    }

    /// <summary>Solves at one frequency around the steady state that was found last. False where the equations are singular.</summary>
    /// <param name="hertz">Frequency, 0 Hz or more.</param>
    /// <exception cref="InvalidOperationException">The network's last analysis was not an operating point.</exception>
    public bool Solve(double hertz)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hertz);
        if (!_network.Point.IsSteady)
            throw new InvalidOperationException("Find the operating point first.");
        _network.System.StampMatrix(_network.Point);
        _network.System.StampConstant(_network.Point);
        _network.System.Evaluate(_network.Point);
        _system.Begin(_network.System.Jacobian);
        foreach (var element in _network.Elements)
            element.StampSmallSignal(_system, 2 * Math.PI * hertz);
        return _system.Solve();
    }

    /// <summary>Amplitude of a node against ground, V.</summary>
    /// <param name="node">Its number.</param>
    public Complex Voltage(int node) => _system.Unknowns[_network.Place(node)];

    /// <summary>Amplitude across a device from plus to minus, V.</summary>
    /// <param name="device">Its number.</param>
    public Complex VoltageAcross(int device)
    {
        var pair = _network.Elements[device].Pair;
        return _system.Unknowns[pair.Plus] - _system.Unknowns[pair.Minus];
    }
}
