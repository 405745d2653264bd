using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Analyses;

/// <summary>One step of TR-BDF2 from a point that is kept, so that it can be made again with another length.</summary>
/// <remarks>
/// R. E. Bank et al., IEEE Trans. CAD 4 (1985); as a diagonally implicit Runge–Kutta method with an embedded third-order formula
/// in M. E. Hosea and L. F. Shampine, Appl. Numer. Math. 20 (1996). Second order, L-stable, both stages with one weight.
/// </remarks>
internal sealed class TransientStepper
{
    private const int IterationLimit = 25;

    /// <summary>Weight of the step in which algebraic quantities follow a jump, s: too short for a state to move.</summary>
    private const double Instant = 1e-10;

    private static readonly double Middle = 2 - Math.Sqrt(2);
    private static readonly double Diagonal = 1 - (Math.Sqrt(2) / 2);
    private static readonly double Side = Math.Sqrt(2) / 4;
    private static readonly double FirstError = Side - ((1 - Side) / 3);
    private static readonly double MiddleError = -1.0 / 3;
    private static readonly double LastError = 2 * Diagonal / 3;

    private readonly Network _network;
    private readonly EquationSystem _system;
    private readonly AnalysisPoint _point;
    private readonly double[] _startStates;
    private readonly double[] _startSlopes;
    private readonly double[] _startUnknowns;
    private readonly double[] _middleSlopes;
    private readonly double[] _before;
    private double _startTime;
    private double _beforeSeconds;

    public TransientStepper(Network network)
    {
        _network = network;
        _system = network.System;
        _point = network.Point;
        Newton = new NewtonSolver(_system);
        _startStates = new double[_point.States.Length];
        _startSlopes = new double[_point.States.Length];
        _middleSlopes = new double[_point.States.Length];
        _startUnknowns = new double[_system.Unknowns.Length];
        _before = new double[_system.Unknowns.Length];
    }

    public NewtonSolver Newton { get; }

    /// <summary>Keeps the present point as the start of steps.</summary>
    /// <param name="isSmooth">Whether the way to here may be continued to guess the next point.</param>
    public void Keep(bool isSmooth)
    {
        _beforeSeconds = isSmooth ? _point.Time - _startTime : 0;
        if (isSmooth)
            _startUnknowns.CopyTo(_before, 0);
        _startTime = _point.Time;
        _point.States.CopyTo(_startStates, 0);
        _point.Slopes.CopyTo(_startSlopes, 0);
        _system.Unknowns.CopyTo(_startUnknowns, 0);
    }

    /// <summary>Steps from the point that was kept. False where the equations could not be solved.</summary>
    /// <param name="step">Length, s.</param>
    /// <param name="end">Time to arrive at, as the sources are to see it: at a jump of theirs, just before it.</param>
    public bool Step(double step, double end)
    {
        _point.Weight = Diagonal * step;
        _system.StampMatrix(_point);

        _point.Time = _startTime + (Middle * step);
        for (var state = 0; state < _startStates.Length; state++)
            _point.Known[state] = _startStates[state] + (_point.Weight * _startSlopes[state]);
        Guess(_startUnknowns, _before, _beforeSeconds > 0 ? Middle * step / _beforeSeconds : 0);
        if (!Solve())
            return false;
        _point.Slopes.CopyTo(_middleSlopes, 0);

        _point.Time = end;
        for (var state = 0; state < _startStates.Length; state++)
            _point.Known[state] = _startStates[state] + (Side * step * (_startSlopes[state] + _middleSlopes[state]));
        Guess(_system.Unknowns, _startUnknowns, (1 - Middle) / Middle);
        return Solve();
    }

    /// <summary>The estimated error of the step made last, over what is allowed.</summary>
    public double Error(double step, double relative, double absolute)
    {
        var largest = 0.0;
        for (var state = 0; state < _startStates.Length; state++)
        {
            var error = step * (
                (FirstError * _startSlopes[state]) + (MiddleError * _middleSlopes[state]) + (LastError * _point.Slopes[state]));
            var allowed = absolute + (relative * Math.Max(Math.Abs(_startStates[state]), Math.Abs(_point.States[state])));
            largest = Math.Max(largest, Math.Abs(error) / allowed);
        }

        return largest;
    }

    /// <summary>Solves for what follows a jump at once while every capacitor and heat state stays. False where that fails.</summary>
    public bool ResolveJump()
    {
        _point.Weight = Instant;
        _system.StampMatrix(_point);

        // Twice where an ideal source has put charge on a capacitor at once: the second time shows the current that goes on.
        for (var round = 0; round < 2; round++)
        {
            _point.States.CopyTo(_point.Known, 0);
            if (!Solve())
                return false;
            if (!HasMoved())
                return true;
        }

        return true;
    }

    /// <summary>A first step for the slopes at the present point, s.</summary>
    public double FirstStep()
    {
        var step = double.PositiveInfinity;
        for (var state = 0; state < _point.States.Length; state++)
            step = Math.Min(step, (0.1 + Math.Abs(_point.States[state])) / Math.Max(1e-30, Math.Abs(_point.Slopes[state])));
        return 0.02 * step;
    }

    private bool HasMoved()
    {
        for (var state = 0; state < _point.States.Length; state++)
        {
            if (Math.Abs(_point.States[state] - _point.Known[state]) > 1e-4 * (1 + Math.Abs(_point.States[state])))
                return true;
        }

        return false;
    }

    private void Guess(double[] from, double[] before, double share)
    {
        var unknowns = _system.Unknowns;
        for (var row = 0; row < unknowns.Length; row++)
            unknowns[row] = from[row] + (share * (from[row] - before[row]));
    }

    private bool Solve()
    {
        _system.StampConstant(_point);
        if (!Newton.Solve(_point, IterationLimit))
        {
            _startUnknowns.CopyTo(_system.Unknowns, 0);
            if (!Newton.Solve(_point, 4 * IterationLimit, isDamped: true))
                return false;
        }

        foreach (var element in _network.Elements)
            element.Accept(_system, _point);
        return true;
    }
}
