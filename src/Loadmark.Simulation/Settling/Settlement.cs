using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Settling;

/// <summary>
/// Finds the steady state of a rig's circuit, again and again with other figures. A load that cannot be fed, or that would drop
/// out and start again for ever, is taken off and told to cycle, until the rest settles. Allocates nothing once it has found a
/// state in which all loads are on.
/// </summary>
public sealed class Settlement
{
    private const double Lowest = (double)(1 - VoltageBand.Allowed);
    private const double Slack = 1e-9;

    private readonly RigCircuit _circuit;
    private readonly OperatingPoint[] _searches;
    private readonly bool[] _isFound;
    private readonly Dictionary<string, int> _loadOfDevice;
    private readonly OperatingPointResult?[] _reasons;
    private readonly double[] _draws;

    /// <summary>Prepares the search.</summary>
    /// <param name="circuit">The circuit; the result is left there.</param>
    /// <param name="options">How to search; null for the usual way.</param>
    public Settlement(RigCircuit circuit, SettleOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        _circuit = circuit;
        var search = new OperatingPointOptions { IterationLimit = (options ?? new SettleOptions()).IterationLimit };
        _searches =
        [
            .. circuit.Parts.Select((part, place) => new OperatingPoint(
                part.Network, search with { MostWork = WorkBudget.OfPart(circuit, place) })),
        ];
        _isFound = new bool[circuit.Parts.Length];
        _reasons = new OperatingPointResult?[circuit.Loads.Length];
        _draws = new double[circuit.Loads.Length];
        _loadOfDevice = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var load = 0; load < circuit.Loads.Length; load++)
        {
            if (circuit.Loads[load].Device is { } device)
                _loadOfDevice.Add(circuit.Parts[device.Part].Network.Devices[device.Number].Name, load);
        }
    }

    /// <summary>The circuit whose steady state is sought.</summary>
    public RigCircuit Circuit => _circuit;

    /// <summary>Whether a state was found for all of it, with some loads taken off or none.</summary>
    public bool IsFound => !_isFound.Contains(false);

    /// <summary>Finds the steady state with the figures that are in force now.</summary>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns><see cref="IsFound"/>.</returns>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public bool Solve(CancellationToken cancellation = default)
    {
        Array.Clear(_reasons);
        for (var part = 0; part < _searches.Length; part++)
            _isFound[part] = Solve(part, cancellation);
        return IsFound;
    }

    /// <summary>
    /// Whether a state was found for the part of the circuit that a load is in. Where not, nothing below means anything for it.
    /// </summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public bool LoadIsFound(int load) => _circuit.Loads[load].Device is not { } device || _isFound[device.Part];

    /// <summary>Whether a state was found for the part of the circuit that an outlet is in.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public bool OutletIsFound(int outlet) => _isFound[_circuit.Outlets[outlet].Device.Part];

    /// <summary>Voltage at a load's jack in the polarity that it wants, V; NaN where it is not in the circuit.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public double LoadVolts(int load) => _circuit.LoadVolts(load);

    /// <summary>What a load draws, A; 0 where it is off.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public double LoadAmps(int load) => _reasons[load] is null ? _circuit.LoadAmps(load) : 0;

    /// <summary>Whether a load has no state to stay in: it starts and drops out over and over.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public bool LoadCycles(int load) =>
        _reasons[load] is not null || (_circuit.Loads[load] is { Feed: { } feed, Device: { } device } && Cycles(feed, device.Part));

    /// <summary>What kept a load from being fed; null where nothing did.</summary>
    internal OperatingPointResult? ReasonOf(int load) => _reasons[load];

    /// <summary>How a load fares.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public LoadState LoadState(int load)
    {
        var branch = _circuit.Loads[load];
        if (branch.Device is null || LoadCycles(load) || !_circuit.LoadIsOn(load))
            return Figures.LoadState.Off;
        return IsLow(branch, LoadVolts(load)) ? Figures.LoadState.Low : Figures.LoadState.Runs;
    }

    /// <summary>What an outlet gives, A.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public double OutletAmps(int outlet) => _circuit.OutletAmps(outlet);

    /// <summary>What an outlet is doing.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public OutletState OutletState(int outlet) => StateOf(_circuit, outlet);

    /// <summary>
    /// Whether an outlet switches off and on over and over: it meets its limit by hiccup, and is at it, or would be if the loads
    /// that cycle ran.
    /// </summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public bool OutletCycles(int outlet)
    {
        var branch = _circuit.Outlets[outlet];
        if (branch.Overload != OverloadWay.Hiccup)
            return false;
        if (_circuit.OutletState(outlet) == DeviceState.Limiting)
            return true;
        var (asked, isTaken) = (0.0, false);
        foreach (var load in _circuit.Parts[branch.Device.Part].Loads)
        {
            var asks = _circuit.Loads[load];
            if (asks.Device is null || !asks.Feed!.Outlets.Contains(branch.Outlet))
                continue;
            asked += asks.RunAmps;
            isTaken |= _reasons[load] is not null;
        }

        return isTaken && asked > branch.LimitAmps;
    }

    /// <summary>Whether a voltage is under 0.90 of the lowest printed one, the mark of under-voltage.</summary>
    internal static bool IsLow(LoadBranch branch, double volts) => volts < (Lowest * branch.LowestPrintedVolts) - Slack;

    /// <summary>The state of an outlet at the point solved last.</summary>
    internal static OutletState StateOf(RigCircuit circuit, int outlet) => circuit.OutletState(outlet) switch
    {
        DeviceState.Limiting => Figures.OutletState.Limiting,
        DeviceState.Off or DeviceState.Tripped => Figures.OutletState.Off,

        // An outlet that feeds nothing stands at its own voltage, a hair above or below; one held up by another well above.
        DeviceState.Blocking when circuit.OutletVolts(outlet) > 1.01 * circuit.Outlets[outlet].Volts => Figures.OutletState.Off,
        _ => Figures.OutletState.Regulating,
    };

    private bool Solve(int part, CancellationToken cancellation)
    {
        var taken = 0;
        var network = _circuit.Parts[part].Network;
        var most = network.Work + WorkBudget.OfPart(_circuit, part);
        try
        {
            while (true)
            {
                var result = _searches[part].Solve(cancellation);
                if (result.Status == OperatingPointStatus.Solved)
                    return true;
                if (network.Work >= most || Culprit(part, result) is not { } load)
                    return false;
                TakeOff(load, result);
                taken++;
            }
        }
        finally
        {
            if (taken > 0)
                PutBack(part);
        }
    }

    private bool Cycles(WiredFeed feed, int part)
    {
        foreach (var outlet in _circuit.Parts[part].Outlets)
        {
            if (OutletCycles(outlet) && feed.Outlets.Contains(_circuit.Outlets[outlet].Outlet))
                return true;
        }

        return false;
    }

    /// <summary>
    /// The load that the search blames; where it blames none, the one that asks for the most power. Null where none is left.
    /// </summary>
    private int? Culprit(int part, in OperatingPointResult result)
    {
        if (result.Device is { } name && _loadOfDevice.TryGetValue(name, out var blamed) && _reasons[blamed] is null)
            return blamed;
        int? most = null;
        var watts = 0.0;
        foreach (var load in _circuit.Parts[part].Loads)
        {
            var branch = _circuit.Loads[load];
            if (branch.RunSlot is null || _reasons[load] is not null || branch.RunAmps * branch.NominalVolts <= watts)
                continue;
            (most, watts) = (load, branch.RunAmps * branch.NominalVolts);
        }

        return most;
    }

    private void TakeOff(int load, in OperatingPointResult result)
    {
        _reasons[load] = result;
        var branch = _circuit.Loads[load];
        _draws[load] = _circuit.Parts[branch.Device!.Value.Part].Network[branch.RunSlot!.Value];
        _circuit.SetRun(load, 0);
    }

    private void PutBack(int part)
    {
        foreach (var load in _circuit.Parts[part].Loads)
        {
            if (_reasons[load] is not null)
                _circuit.Parts[part].Network[_circuit.Loads[load].RunSlot!.Value] = _draws[load];
        }
    }
}
