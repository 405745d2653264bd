using Loadmark.Circuits.Analyses;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;

namespace Loadmark.Simulation.Starting;

/// <summary>
/// Computes the first seconds of a rig's circuit with the figures that are in force, again and again. What an outlet bears for a
/// moment counts as its limit; one that would be over its limit for longer than that is computed again without.
/// </summary>
public sealed class StartUpRun
{
    private const double HeaterConstants = 5;
    private const double SlowestStarts = 3;
    private const double LateShare = 0.3;
    private const int CycleStarts = 3;

    private readonly RigCircuit _circuit;
    private readonly Transient? _transient;
    private StartUpMeter _meter;

    /// <summary>Prepares the run.</summary>
    /// <param name="circuit">The circuit; it is left at the last point.</param>
    /// <param name="options">How to compute; null for the usual way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The duration is not over 0 s.</exception>
    public StartUpRun(RigCircuit circuit, StartUpOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        options ??= new StartUpOptions();
        _circuit = circuit;
        EndSeconds = options.Duration is { } typed ? (double)typed.Value : CommonEnd(circuit);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(EndSeconds, nameof(options));

        // Between points waveforms are drawn straight, so no step may hide a bend.
        _transient = circuit.Network is { } network ? new Transient(network, new TransientOptions(EndSeconds) { LongestStep = EndSeconds / 200 }) : null;
        _meter = new StartUpMeter(circuit, null);
        SurgeSpent = new bool[circuit.Outlets.Length];
    }

    /// <summary>The circuit.</summary>
    public RigCircuit Circuit => _circuit;

    /// <summary>How long is computed, s.</summary>
    public double EndSeconds { get; }

    /// <summary>Whether the last run came to its end. Where not, it tells what was seen until then.</summary>
    public bool IsComplete { get; private set; }

    /// <summary>When the last run ended, s.</summary>
    public double ReachedSeconds { get; private set; }

    /// <summary>For each outlet whether it was over its limit for longer than it bears its surge, and was computed without.</summary>
    internal bool[] SurgeSpent { get; }

    /// <summary>Runs from switch-on to the end.</summary>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns><see cref="IsComplete"/>.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public bool Run(CancellationToken cancellation = default) => Run(static () => null, cancellation);

    /// <summary>Runs, with someone else watching too.</summary>
    /// <param name="observer">Makes the one who watches, anew for each attempt.</param>
    /// <param name="cancellation">Stops the run.</param>
    internal bool Run(Func<ITransientObserver?> observer, CancellationToken cancellation)
    {
        Array.Clear(SurgeSpent);
        (IsComplete, ReachedSeconds) = (_transient is null, 0);
        if (_transient is null)
            return true;

        var limits = Array.ConvertAll([.. _circuit.Outlets], branch => _circuit.Network![branch.LimitSlot]);
        try
        {
            do
            {
                for (var outlet = 0; outlet < limits.Length; outlet++)
                    _circuit.SetLimit(outlet, SurgeSpent[outlet] ? limits[outlet] : Math.Max(limits[outlet], _circuit.Outlets[outlet].Surge?.Amps ?? 0));
                _meter = new StartUpMeter(_circuit, observer());
                var result = _transient.Run(_meter, cancellation);
                (IsComplete, ReachedSeconds) = (result.Status == TransientStatus.Completed, result.Seconds);
            }
            while (SpendSurges());
        }
        finally
        {
            for (var outlet = 0; outlet < limits.Length; outlet++)
                _circuit.SetLimit(outlet, limits[outlet]);
        }

        return IsComplete;
    }

    /// <summary>When a load started to run for good, s; null where it does not.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public double? LoadRunsAfter(int load) => _meter.Loads[load].IsOn && !LoadCycles(load) ? _meter.Loads[load].LastStart : null;

    /// <summary>The lowest voltage at a load's jack while it was on, V; null where it never was.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public double? LoadLowestVolts(int load) => double.IsInfinity(_meter.Loads[load].LowestVolts) ? null : _meter.Loads[load].LowestVolts;

    /// <summary>How often a load started again after it had dropped out.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public int LoadRestarts(int load) => Math.Max(0, _meter.Loads[load].Starts - 1);

    /// <summary>Whether a load starts over and over: three times or more, and still towards the end.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public bool LoadCycles(int load)
    {
        var meter = _meter.Loads[load];
        return meter.Starts >= CycleStarts && Math.Max(meter.LastStart, meter.LastDrop) > (1 - LateShare) * ReachedSeconds;
    }

    /// <summary>How a load fares at the end.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public LoadState LoadState(int load)
    {
        if (LoadRunsAfter(load) is null)
            return Simulation.LoadState.Off;
        return Settlement.IsLow(_circuit.Loads[load], _meter.Loads[load].Volts) ? Simulation.LoadState.Low : Simulation.LoadState.Runs;
    }

    /// <summary>The most that an outlet gave, A, and when that was first, s.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public (double Amps, double Seconds) OutletPeak(int outlet) => (_meter.Outlets[outlet].PeakAmps, _meter.Outlets[outlet].PeakAt);

    /// <summary>How long an outlet was at its limit or over it, s.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public double OutletSecondsOver(int outlet) => _meter.Outlets[outlet].SecondsOver;

    private static double CommonEnd(RigCircuit circuit)
    {
        var end = StartUpOptions.CommonSeconds;
        foreach (var load in circuit.Loads)
        {
            end = Math.Max(end, SlowestStarts * (load.StartSeconds + CommonFigures.HiccupOffSeconds.Value));
            if (load.IsHeater)
                end = Math.Max(end, HeaterConstants * CommonFigures.HeaterSeconds.Value);
        }

        return end;
    }

    /// <summary>Notes the outlets that were over their limit for longer than they bear it. Returns whether there are new ones.</summary>
    private bool SpendSurges()
    {
        var isNew = false;
        for (var outlet = 0; outlet < SurgeSpent.Length; outlet++)
        {
            if (SurgeSpent[outlet] || _circuit.Outlets[outlet] is not { Surge: { } surge, Overload: not (null or OverloadWay.Fuse) })
                continue;
            SurgeSpent[outlet] = _meter.Outlets[outlet].LongestStretch > surge.Seconds;
            isNew |= SurgeSpent[outlet];
        }

        return isNew;
    }
}
