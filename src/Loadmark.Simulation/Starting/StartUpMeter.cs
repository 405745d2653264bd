using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Simulation.Starting;

/// <summary>Watches a start-up and keeps what counts for each load and outlet. Allocates nothing while it watches.</summary>
internal sealed class StartUpMeter : ITransientObserver
{
    private const double Slack = 1e-6;

    private readonly RigCircuit _circuit;
    private readonly ITransientObserver? _also;
    private double _last;

    public StartUpMeter(RigCircuit circuit, ITransientObserver? also)
    {
        (_circuit, _also) = (circuit, also);
        Loads = new LoadMeter[circuit.Loads.Length];
        Outlets = new OutletMeter[circuit.Outlets.Length];
        for (var load = 0; load < Loads.Length; load++)
            Loads[load] = LoadMeter.Fresh;
    }

    /// <summary>What was seen of each load.</summary>
    public LoadMeter[] Loads { get; }

    /// <summary>What was seen of each outlet.</summary>
    public OutletMeter[] Outlets { get; }

    /// <inheritdoc/>
    public void OnPoint(double seconds, Network network)
    {
        for (var load = 0; load < Loads.Length; load++)
            Read(load, ref Loads[load], seconds);
        for (var outlet = 0; outlet < Outlets.Length; outlet++)
            Read(outlet, ref Outlets[outlet], seconds);
        _last = seconds;
        _also?.OnPoint(seconds, network);
    }

    /// <inheritdoc/>
    public void OnEvent(in TransientEvent change) => _also?.OnEvent(change);

    private void Read(int load, ref LoadMeter meter, double seconds)
    {
        var branch = _circuit.Loads[load];
        if (branch.Device is null)
            return;
        var volts = _circuit.LoadVolts(load);
        meter.Volts = volts;
        var isOn = branch.IsHeater ? volts >= (meter.IsOn ? branch.StopsBelow : branch.StartsAbove) : _circuit.LoadIsOn(load);
        if (isOn && !meter.IsOn)
        {
            meter.Starts++;
            meter.LastStart = seconds;
        }

        if (meter.IsOn && !isOn)
            meter.LastDrop = seconds;
        meter.IsOn = isOn;
        if (isOn)
            meter.LowestVolts = Math.Min(meter.LowestVolts, volts);
    }

    /// <summary>The state seen at a point is the one that was in force on the way there.</summary>
    private void Read(int outlet, ref OutletMeter meter, double seconds)
    {
        var amps = _circuit.OutletAmps(outlet);
        if (amps > meter.PeakAmps)
            (meter.PeakAmps, meter.PeakAt) = (amps, seconds);
        var rated = _circuit.Outlets[outlet].LimitAmps;
        if (amps > rated * (1 + Slack) || _circuit.OutletState(outlet) is DeviceState.Limiting or DeviceState.Tripped)
        {
            meter.SecondsOver += seconds - _last;
            meter.Stretch += seconds - _last;
            meter.LongestStretch = Math.Max(meter.LongestStretch, meter.Stretch);
        }
        else
        {
            meter.Stretch = 0;
        }
    }
}
