using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>Watches a start-up and keeps what counts for each load and outlet. Allocates nothing while it watches.</summary>
internal sealed class StartUpMeter : ITransientObserver
{
    private const double Slack = 1e-6;

    private readonly RigCircuit _circuit;
    private readonly CircuitPart _part;
    private readonly LoadMeter[] _loads;
    private readonly OutletMeter[] _outlets;
    private ITransientObserver? _also;
    private readonly LoadMeter[] _loadsBefore;
    private readonly OutletMeter[] _outletsBefore;
    private double _last;
    private double _repetition;

    /// <summary>Prepares to watch one part of a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="part">The part.</param>
    /// <param name="loads">Where to keep what is seen of each load of the circuit.</param>
    /// <param name="outlets">Where to keep what is seen of each outlet of the circuit.</param>
    public StartUpMeter(RigCircuit circuit, CircuitPart part, LoadMeter[] loads, OutletMeter[] outlets) =>
        (_circuit, _part, _loads, _outlets, _loadsBefore, _outletsBefore) =
            (circuit, part, loads, outlets, new LoadMeter[part.Loads.Length], new OutletMeter[part.Outlets.Length]);

    /// <summary>Forgets what it has seen.</summary>
    /// <param name="also">Who watches too; null: nobody.</param>
    public void Begin(ITransientObserver? also)
    {
        (_also, _last) = (also, 0);
        foreach (var load in _part.Loads)
            _loads[load] = LoadMeter.Fresh;
        foreach (var outlet in _part.Outlets)
            _outlets[outlet] = default;
    }

    /// <inheritdoc/>
    public void OnPoint(double seconds, Network network)
    {
        foreach (var load in _part.Loads)
            Read(load, ref _loads[load], seconds);
        foreach (var outlet in _part.Outlets)
            Read(outlet, ref _outlets[outlet], seconds);
        _last = seconds;
        _also?.OnPoint(seconds, network);
    }

    /// <inheritdoc/>
    public void OnEvent(in TransientEvent change) => _also?.OnEvent(change);

    /// <inheritdoc/>
    public void OnRepeat(double seconds, double repetition, int rounds)
    {
        _repetition = repetition;
        for (var place = 0; place < _loadsBefore.Length; place++)
            _loadsBefore[place] = _loads[_part.Loads[place]];
        for (var place = 0; place < _outletsBefore.Length; place++)
            _outletsBefore[place] = _outlets[_part.Outlets[place]];
        _also?.OnRepeat(seconds, repetition, rounds);
    }

    /// <summary>After a run that ended with a repetition: counts as often what was seen in it as there is time for until the end.</summary>
    /// <param name="end">The end, s.</param>
    public void GoOn(double end)
    {
        var share = (end - _last) / _repetition;
        var times = (int)share;
        for (var place = 0; place < _loadsBefore.Length; place++)
        {
            ref var load = ref _loads[_part.Loads[place]];
            var before = _loadsBefore[place];
            if (load.LastDrop > before.LastDrop || double.IsNaN(before.LastDrop))
                load.LastDrop += times * _repetition;
            if (load.Starts > before.Starts)
                load.LastStart += times * _repetition;
            load.Starts += times * (load.Starts - before.Starts);
        }

        for (var place = 0; place < _outletsBefore.Length; place++)
        {
            ref var outlet = ref _outlets[_part.Outlets[place]];
            outlet.SecondsOver += share * (outlet.SecondsOver - _outletsBefore[place].SecondsOver);
        }
    }

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
