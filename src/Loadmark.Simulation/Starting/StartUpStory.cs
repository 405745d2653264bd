using System.Collections.Immutable;
using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Display;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Starting;

/// <summary>Turns changes of state into events in plain words.</summary>
internal sealed class StartUpStory : ITransientObserver
{
    /// <summary>A start-up that chatters could tell millions; nobody reads them.</summary>
    private const int MostEvents = 10_000;

    private readonly RigCircuit _circuit;
    private readonly Dictionary<int, int> _loads = [];
    private readonly Dictionary<int, int> _outlets = [];
    private readonly Dictionary<int, int> _fuses = [];
    private readonly ImmutableArray<StartUpEvent>.Builder _events = ImmutableArray.CreateBuilder<StartUpEvent>();
    private bool _hasEnded;

    /// <summary>Prepares to tell of one part of a circuit.</summary>
    public StartUpStory(RigCircuit circuit, CircuitPart part)
    {
        _circuit = circuit;
        foreach (var load in part.Loads)
        {
            if (circuit.Loads[load].Device is { } device)
                _loads.Add(device.Number, load);
        }

        foreach (var outlet in part.Outlets)
        {
            _outlets.Add(circuit.Outlets[outlet].Device.Number, outlet);
            if (circuit.Outlets[outlet].Fuse is { } fuse)
                _fuses.Add(fuse.Number, outlet);
        }
    }

    /// <summary>What happened, in order.</summary>
    public ImmutableArray<StartUpEvent> Events => _events.ToImmutable();

    /// <inheritdoc/>
    public void OnPoint(double seconds, Network network)
    {
        // Only changes make a story.
    }

    /// <summary>Tells a change, if a technician would.</summary>
    public void OnEvent(in TransientEvent change)
    {
        if (_hasEnded || _events.Count >= MostEvents)
            return;
        if (_loads.TryGetValue(change.Device, out var load))
            TellLoad(change, load);
        else if (_outlets.TryGetValue(change.Device, out var outlet))
            TellOutlet(change, outlet);
        else if (_fuses.TryGetValue(change.Device, out var fused))
            TellFuse(change, fused);
    }

    /// <summary>Tells that it goes on and on, of what changed last.</summary>
    public void OnRepeat(double seconds, double repetition, int rounds)
    {
        if (_events.Count == 0 || _events.Count >= MostEvents)
            return;
        var round = SiConversion.Seconds(repetition / rounds);
        _events.Add(new StartUpEvent(
            SiConversion.Seconds(seconds),
            _events[^1].Subject,
            StartUpEventKind.Repeats,
            null,
            $"From here on this happens over and over, every {FigureDisplay.Said(round)}."));
        _hasEnded = true;
    }

    private void TellLoad(in TransientEvent change, int place)
    {
        var branch = _circuit.Loads[place];
        var volts = SiConversion.Volts(Math.Round(_circuit.LoadVolts(place), FigureDisplay.VoltDecimals));
        var what = (change.From, change.To) switch
        {
            (_, DeviceState.Off) => (StartUpEventKind.DropsOut, $"{branch.Id} drops out at {volts}."),
            (_, DeviceState.Booting) => (
                StartUpEventKind.Starts,
                $"{branch.Id} starts, at {volts}: it takes {SiConversion.Amps(branch.StartAmps)} for "
                + $"{SiConversion.Seconds(branch.StartSeconds)}."),
            (DeviceState.Booting, DeviceState.Running) => (
                StartUpEventKind.HasStarted, $"{branch.Id} has started; it takes {SiConversion.Amps(branch.RunAmps)} now."),
            (_, DeviceState.Running) => (
                StartUpEventKind.Starts, $"{branch.Id} starts, at {volts}: it takes {SiConversion.Amps(branch.RunAmps)}."),
            _ => default((StartUpEventKind Kind, string? Text)),
        };
        Add(change.Seconds, branch.Id, what, volts);
    }

    private void TellOutlet(in TransientEvent change, int place)
    {
        var branch = _circuit.Outlets[place];
        var limit = SiConversion.Amps(_circuit.Limit(place));
        var volts = SiConversion.Volts(Math.Round(_circuit.OutletVolts(place), FigureDisplay.VoltDecimals));
        var what = (change.From, change.To) switch
        {
            (_, DeviceState.Limiting) => (StartUpEventKind.AtLimit, $"{branch.Name} reaches its limit of {limit}."),
            (DeviceState.Off, _) => (StartUpEventKind.TriesAgain, $"{branch.Name} tries again."),
            (_, DeviceState.Off) => (StartUpEventKind.SwitchesOff, $"{branch.Name} has been at its limit too long and switches off."),
            (DeviceState.Limiting, _) => (StartUpEventKind.WithinLimit, $"{branch.Name} is within its limit again."),
            _ => default((StartUpEventKind Kind, string? Text)),
        };
        Add(change.Seconds, branch.Name, what, volts);
    }

    private void TellFuse(in TransientEvent change, int place)
    {
        var branch = _circuit.Outlets[place];
        var what = change.To == DeviceState.Tripped
            ? (StartUpEventKind.FuseTrips, $"The fuse of {branch.Name} trips.")
            : (StartUpEventKind.FuseCloses, $"The fuse of {branch.Name} has cooled and closes again.");
        Add(change.Seconds, branch.Name, what, SiConversion.Volts(Math.Round(_circuit.OutletVolts(place), FigureDisplay.VoltDecimals)));
    }

    private void Add(double seconds, string subject, (StartUpEventKind Kind, string? Text) what, Volts? volts)
    {
        if (what.Text is { } text)
            _events.Add(new StartUpEvent(SiConversion.Seconds(seconds), subject, what.Kind, volts, text));
    }
}
