using Loadmark.Circuits.Analyses;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Wiring;

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
    private const double FewestSteps = 200;

    private readonly RigCircuit _circuit;
    private readonly int[] _parts;
    private readonly Transient[] _transients;
    private readonly StartUpMeter[] _meters;
    private readonly LoadMeter[] _loads;
    private readonly OutletMeter[] _outlets;
    private readonly double[] _limits;
    private readonly double[] _reached;

    /// <summary>Prepares the run.</summary>
    /// <param name="circuit">The circuit; it is left at the last point.</param>
    /// <param name="options">How to compute; null for the usual way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The duration is not over 0 s.</exception>
    public StartUpRun(RigCircuit circuit, StartUpOptions? options = null)
        : this(circuit, options, null)
    {
    }

    private StartUpRun(RigCircuit circuit, StartUpOptions? options, int? part)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        _circuit = circuit;
        _parts = part is { } only ? [only] : [.. Enumerable.Range(0, circuit.Parts.Length)];
        EndSeconds = options?.Duration is { } typed ? (double)typed.Value : CommonEnd(circuit, _parts);
        if (!(EndSeconds > 0))
            throw new ArgumentOutOfRangeException(nameof(options), EndSeconds, "Must be over 0.");

        // Between points waveforms are drawn straight, so no step may hide a bend.
        var transient = new TransientOptions(EndSeconds)
        {
            LongestStep = EndSeconds / FewestSteps,
            RepeatsAfter = (options ?? new StartUpOptions()).RepeatsAfter,
        };
        _loads = new LoadMeter[circuit.Loads.Length];
        for (var load = 0; load < _loads.Length; load++)
            _loads[load] = LoadMeter.Fresh;
        _outlets = new OutletMeter[circuit.Outlets.Length];
        _transients = Array.ConvertAll(_parts, place => new Transient(
            circuit.Parts[place].Network,
            transient with { MostWork = WorkBudget.OfPart(circuit, place) }));
        _meters = Array.ConvertAll(_parts, place => new StartUpMeter(circuit, circuit.Parts[place], _loads, _outlets));
        _limits = new double[_outlets.Length];
        _reached = new double[circuit.Parts.Length];
        Array.Fill(_reached, EndSeconds);
        SurgeSpent = new bool[_outlets.Length];
    }

    /// <summary>
    /// Prepares the run of one part alone, for as long as its own loads call for where nothing else is asked for. Nothing is told of the
    /// others.
    /// </summary>
    internal static StartUpRun OfPart(RigCircuit circuit, int part, StartUpOptions? options = null) => new(circuit, options, part);

    /// <summary>The circuit that is started.</summary>
    public RigCircuit Circuit => _circuit;

    /// <summary>How long is computed, s.</summary>
    public double EndSeconds { get; }

    /// <summary>
    /// Whether the last run came to its end, or to where all repeats. Where not, it tells what was seen until then.
    /// </summary>
    public bool IsComplete { get; private set; }

    /// <summary>Whether some part of the circuit was seen to repeat in the last run, and was not computed to the end.</summary>
    public bool Repeats { get; private set; }

    /// <summary>
    /// Up to when the last run tells, s: to the end, as what repeats goes on, or to where the first part of the circuit could not be
    /// computed on.
    /// </summary>
    public double ReachedSeconds => Earliest();

    /// <summary>For each outlet whether it was over its limit for longer than it bears its surge, and was computed without.</summary>
    internal bool[] SurgeSpent { get; }

    /// <summary>Runs from switch-on to the end.</summary>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns><see cref="IsComplete"/>.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public bool Run(CancellationToken cancellation = default) => Run(static _ => null, cancellation);

    /// <summary>Runs, with someone else watching too.</summary>
    /// <param name="observer">Makes the one who watches a part, by its place, anew for each attempt.</param>
    /// <param name="cancellation">Stops the run.</param>
    internal bool Run(Func<int, ITransientObserver?> observer, CancellationToken cancellation)
    {
        Array.Clear(SurgeSpent);
        (IsComplete, Repeats) = (true, false);
        for (var outlet = 0; outlet < _limits.Length; outlet++)
            _limits[outlet] = _circuit.Limit(outlet);
        try
        {
            for (var place = 0; place < _parts.Length; place++)
                IsComplete &= Run(place, observer, cancellation);
        }
        finally
        {
            for (var outlet = 0; outlet < _limits.Length; outlet++)
                _circuit.SetLimit(outlet, _limits[outlet]);
        }

        return IsComplete;
    }

    private bool Run(int place, Func<int, ITransientObserver?> observer, CancellationToken cancellation)
    {
        var part = _parts[place];
        while (true)
        {
            foreach (var outlet in _circuit.Parts[part].Outlets)
                _circuit.SetLimit(
                    outlet, SurgeSpent[outlet] ? _limits[outlet] : Math.Max(_limits[outlet], _circuit.Outlets[outlet].Surge?.Amps ?? 0));
            _meters[place].Begin(observer(part));
            var result = _transients[place].Run(_meters[place], cancellation);
            _reached[part] = result.Seconds;
            if (SpendSurges(part))
                continue;
            if (result.Status == TransientStatus.Repeats)
            {
                _meters[place].GoOn(EndSeconds);
                (_reached[part], Repeats) = (EndSeconds, true);
            }

            return result.Status is TransientStatus.Completed or TransientStatus.Repeats;
        }
    }

    /// <summary>When a load started to run for good, s; null where it does not.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public double? LoadRunsAfter(int load) => _loads[load].IsOn && !LoadCycles(load) ? _loads[load].LastStart : null;

    /// <summary>The lowest voltage at a load's jack while it was on, V; null where it never was.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public double? LoadLowestVolts(int load) => double.IsInfinity(_loads[load].LowestVolts) ? null : _loads[load].LowestVolts;

    /// <summary>How often a load started again after it had dropped out.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public int LoadRestarts(int load) => Math.Max(0, _loads[load].Starts - 1);

    /// <summary>Whether a load starts over and over: three times or more, and still towards the end.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public bool LoadCycles(int load)
    {
        var meter = _loads[load];
        return meter.Starts >= CycleStarts
            && Math.Max(meter.LastStart, meter.LastDrop) > (1 - LateShare) * _reached[_circuit.Loads[load].Device!.Value.Part];
    }

    /// <summary>How a load fares at the end.</summary>
    /// <param name="load">Its place in <see cref="RigCircuit.Loads"/>.</param>
    public LoadState LoadState(int load)
    {
        if (LoadRunsAfter(load) is null)
            return Figures.LoadState.Off;
        return Settlement.IsLow(_circuit.Loads[load], _loads[load].Volts) ? Figures.LoadState.Low : Figures.LoadState.Runs;
    }

    /// <summary>The most that an outlet gave, A, and when that was first, s.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public (double Amps, double Seconds) OutletPeak(int outlet) => (_outlets[outlet].PeakAmps, _outlets[outlet].PeakAt);

    /// <summary>How long an outlet was at its limit or over it, s.</summary>
    /// <param name="outlet">Its place in <see cref="RigCircuit.Outlets"/>.</param>
    public double OutletSecondsOver(int outlet) => _outlets[outlet].SecondsOver;

    private static double CommonEnd(RigCircuit circuit, int[] parts)
    {
        var end = StartUpOptions.CommonSeconds;
        foreach (var part in parts)
        {
            foreach (var load in circuit.Parts[part].Loads)
                end = Math.Max(end, EndOf(circuit.Loads[load]));
        }

        return end;
    }

    private static double EndOf(LoadBranch load) => Math.Max(
        SlowestStarts * (load.StartSeconds + CircuitDefaults.HiccupOffSeconds.Value),
        load.IsHeater ? HeaterConstants * CircuitDefaults.HeaterSeconds.Value : 0);

    private double Earliest()
    {
        var earliest = EndSeconds;
        foreach (var seconds in _reached)
            earliest = Math.Min(earliest, seconds);
        return earliest;
    }

    /// <summary>Notes the outlets that were over their limit for longer than they bear it. Returns whether there are new ones.</summary>
    private bool SpendSurges(int part)
    {
        var isNew = false;
        foreach (var outlet in _circuit.Parts[part].Outlets)
        {
            if (SurgeSpent[outlet] || _circuit.Outlets[outlet] is not { Surge: { } surge, Overload: not (null or OverloadWay.Fuse) })
                continue;
            SurgeSpent[outlet] = _outlets[outlet].LongestStretch > surge.Seconds;
            isNew |= SurgeSpent[outlet];
        }

        return isNew;
    }
}
