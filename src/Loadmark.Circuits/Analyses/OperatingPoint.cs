using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>Finds the steady state of a network: capacitors open, heat settled, every load at its running draw.</summary>
/// <remarks>
/// Where loads of constant power admit several solutions, the search starts from the open circuit and so finds the one with the
/// highest voltages, which is the one that a rig settles in. May be used again and again; allocates nothing once it found a state.
/// </remarks>
public sealed class OperatingPoint
{
    private readonly Network _network;
    private readonly OperatingPointOptions _options;
    private readonly EquationSystem _system;
    private readonly AnalysisPoint _point;
    private readonly NewtonSolver _newton;
    private readonly LoadElement[] _loads;
    private readonly bool[] _wasOn;
    private readonly double[] _open;
    private readonly double[] _anchor;
    private readonly List<(double Share, LoadElement Load)> _sagging = [];
    private readonly List<LoadElement> _together = [];
    private SolutionMethods _tried;

    /// <summary>So many loads are switched off one by one; of more, one in so many of those that are off at a time.</summary>
    private const int DroppedSingly = 32;

    /// <summary>Prepares the analysis of a network.</summary>
    /// <param name="network">The network; the analysis leaves its result there.</param>
    /// <param name="options">How to search; null for the usual way.</param>
    public OperatingPoint(Network network, OperatingPointOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(network);
        _network = network;
        _options = options ?? new OperatingPointOptions();
        _system = network.System;
        _point = network.Point;
        _newton = new NewtonSolver(_system);
        _loads = [.. network.Elements.OfType<LoadElement>()];
        _wasOn = new bool[_loads.Length];
        _open = new double[_system.Unknowns.Length];
        _anchor = new double[_system.Unknowns.Length];
    }

    /// <summary>Finds the steady state with the figures as they are now.</summary>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public OperatingPointResult Solve(CancellationToken cancellation = default)
    {
        Begin();
        _newton.MostWork = _options.MostWork == long.MaxValue ? long.MaxValue : _system.Work + _options.MostWork;
        _together.Clear();
        var (dropped, isSingle) = (0, false);
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            var isFound = Search(cancellation);
            foreach (var element in _network.Elements)
                element.Accept(_system, _point);

            var fallen = Fallen();
            if (isFound && _options.DropsOut && fallen is { StopsBelow: > 0 })
            {
                dropped += Drop(fallen, isSingle ? 1 : 1 + (dropped / DroppedSingly));
                continue;
            }

            if (isFound && fallen is null && _together.Count > 1 && Returning() is not null)
            {
                // Of the loads that were switched off together last some need not have been: one by one from there.
                foreach (var load in _together)
                    load.IsOn = true;
                isSingle = true;
                _together.Clear();
                continue;
            }

            if (isFound && fallen is null)
                return _options.DropsOut && Returning() is { } returning
                    ? Result(OperatingPointStatus.Unsteady, returning.Device.Name, null)
                    : Result(OperatingPointStatus.Solved, null, null);
            return _newton.IsSpent ? Result(OperatingPointStatus.NotFound, fallen?.Device.Name, null) : Explain(fallen);
        }
    }

    /// <summary>
    /// Switches loads off, the worst first: one, or the more of them at once the more are off already, so that a thousand loads that drop
    /// out take some hundred searches and not a thousand. Where the rest holds it is a steady state either way.
    /// </summary>
    private int Drop(LoadElement worst, int most)
    {
        _together.Clear();
        if (most <= 1)
        {
            worst.IsOn = false;
            return 1;
        }

        _sagging.Clear();
        foreach (var load in _loads)
        {
            if (load is { IsOn: true, StopsBelow: > 0 } && ShareOf(load) is var share and < 1)
                _sagging.Add((share, load));
        }

        _sagging.Sort(static (one, other) => one.Share.CompareTo(other.Share));
        var count = Math.Min(most, _sagging.Count);
        for (var place = 0; place < count; place++)
        {
            _together.Add(_sagging[place].Load);
            _sagging[place].Load.IsOn = false;
        }

        return count;
    }

    private void Begin()
    {
        _point.IsSteady = true;
        (_point.Time, _point.Weight, _point.SourceShare) = (0, 0, 1);
        (_newton.Iterations, _tried) = (0, SolutionMethods.None);
        _system.GroundSiemens = 0;
        _system.Anchor = null;
        foreach (var element in _network.Elements)
            element.Reset(_point);
        _system.StampMatrix(_point);
        _system.StampConstant(_point);
    }

    /// <summary>Finds a solution of the bent equations for the loads that are on.</summary>
    private bool Search(CancellationToken cancellation)
    {
        OpenCircuit();
        if (Try(SolutionMethods.Newton, isDamped: false) || Try(SolutionMethods.DampedNewton, isDamped: true))
            return true;
        cancellation.ThrowIfCancellationRequested();
        return StepConductance() || StepSources(cancellation) || PseudoTransient(cancellation);
    }

    private void OpenCircuit()
    {
        for (var index = 0; index < _loads.Length; index++)
            (_wasOn[index], _loads[index].IsOn) = (_loads[index].IsOn, false);
        Array.Clear(_system.Unknowns);
        Renew();
        if (!_newton.Solve(_point, _options.IterationLimit))
            Array.Clear(_system.Unknowns);
        for (var index = 0; index < _loads.Length; index++)
            _loads[index].IsOn = _wasOn[index];
        _system.Unknowns.CopyTo(_open, 0);
    }

    /// <summary>Forgets what elements remember from one iteration to the next.</summary>
    private void Renew()
    {
        foreach (var element in _network.Elements)
        {
            if (element is DiodeElement or OutletElement)
                element.Reset(_point);
        }
    }

    private bool Try(SolutionMethods method, bool isDamped)
    {
        _tried |= method;
        _open.CopyTo(_system.Unknowns, 0);
        return _newton.Solve(_point, _options.IterationLimit, isDamped);
    }

    private bool StepConductance()
    {
        _tried |= SolutionMethods.ConductanceStepping;
        _open.CopyTo(_system.Unknowns, 0);
        _open.CopyTo(_anchor, 0);
        _system.Anchor = _anchor;
        for (var siemens = 1.0; siemens > 1e-12; siemens /= 4)
        {
            _system.GroundSiemens = siemens;
            if (!_newton.Solve(_point, _options.IterationLimit, isDamped: true))
                break;
        }

        _system.GroundSiemens = 0;
        _system.Anchor = null;
        return _newton.Solve(_point, _options.IterationLimit, isDamped: true);
    }

    private bool StepSources(CancellationToken cancellation)
    {
        _tried |= SolutionMethods.SourceStepping;
        Array.Clear(_system.Unknowns);
        Renew();
        var (reached, stride) = (0.0, 0.1);
        while (reached < 1 && stride > 1e-6)
        {
            cancellation.ThrowIfCancellationRequested();
            _system.Unknowns.CopyTo(_anchor, 0);
            _point.SourceShare = Math.Min(1, reached + stride);
            _system.StampConstant(_point);
            if (_newton.Solve(_point, _options.IterationLimit))
            {
                reached = _point.SourceShare;
                stride *= 1.5;
            }
            else
            {
                _anchor.CopyTo(_system.Unknowns, 0);
                stride /= 4;
            }
        }

        _point.SourceShare = 1;
        _system.StampConstant(_point);
        return _newton.Solve(_point, _options.IterationLimit);
    }

    private bool PseudoTransient(CancellationToken cancellation)
    {
        _tried |= SolutionMethods.PseudoTransient;
        _open.CopyTo(_system.Unknowns, 0);
        _system.Anchor = _anchor;
        _system.GroundSiemens = 1;
        for (var step = 0; step < 400 && !_newton.IsSpent && _system.GroundSiemens is > 1e-12 and < 1e12; step++)
        {
            cancellation.ThrowIfCancellationRequested();
            _system.Unknowns.CopyTo(_anchor, 0);
            if (_newton.Solve(_point, 20))
            {
                _system.GroundSiemens /= 2;
            }
            else
            {
                _anchor.CopyTo(_system.Unknowns, 0);
                _system.GroundSiemens *= 8;
            }
        }

        _system.GroundSiemens = 0;
        _system.Anchor = null;
        return _newton.Solve(_point, _options.IterationLimit);
    }

    /// <summary>
    /// The load that is furthest below what it needs: its drop-out voltage, or the floor of its law. Null where none is below.
    /// </summary>
    private LoadElement? Fallen()
    {
        LoadElement? worst = null;
        var least = 1.0;
        foreach (var load in _loads)
        {
            var share = ShareOf(load);
            if (share >= least)
                continue;
            (worst, least) = (load, share);
        }

        return worst;
    }

    /// <summary>The voltage of a load as a share of what it needs to stay on; 1 where it needs none or is off.</summary>
    private double ShareOf(LoadElement load)
    {
        var needed = load.Law == LoadLaw.Resistance || load.Draw == 0 ? 0 : load.FloorVolts;
        if (_options.DropsOut)
            needed = Math.Max(needed, load.StopsBelow);
        return needed > 0 && load.IsOn ? _system.VoltageOf(load.Pair) / needed : 1;
    }

    private LoadElement? Returning()
    {
        foreach (var load in _loads)
        {
            if (!load.IsOn && _system.VoltageOf(load.Pair) >= load.StartsAbove)
                return load;
        }

        return null;
    }

    private OperatingPointResult Explain(LoadElement? fallen)
    {
        var proof = ShortfallSearch.Find(_network);
        return Result(proof is null ? OperatingPointStatus.NotFound : OperatingPointStatus.NoSolution, fallen?.Device.Name, proof);
    }

    private OperatingPointResult Result(OperatingPointStatus status, string? device, Shortfall? proof)
    {
        var worst = _system.WorstRow();
        return new OperatingPointResult(
            status, _newton.Iterations, _tried, _network.RowName(worst), _system.Residual[worst], device, proof);
    }
}
