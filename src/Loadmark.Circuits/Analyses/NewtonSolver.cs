namespace Loadmark.Circuits.Analyses;

/// <summary>Newton's method on the equations of a network, with or without damping. Allocates nothing.</summary>
internal sealed class NewtonSolver(EquationSystem system)
{
    private const double ShortestShare = 1.0 / 1024;

    /// <summary>Iterations since the count was last set to 0.</summary>
    public int Iterations { get; set; }

    /// <summary>The work of the equations beyond which no step is made any more.</summary>
    public long MostWork { get; set; } = long.MaxValue;

    /// <summary>Whether no step may be made any more.</summary>
    public bool IsSpent => system.Work >= MostWork;

    /// <summary>Iterates from the present unknowns.</summary>
    /// <param name="point">The point to solve at; matrix and constants are stamped for it.</param>
    /// <param name="limit">The most iterations.</param>
    /// <param name="isDamped">Whether a step that does not lessen the residual is shortened.</param>
    public bool Solve(AnalysisPoint point, int limit, bool isDamped = false)
    {
        var isSolved = system.Evaluate(point);
        for (var count = 0; count < limit && !isSolved; count++)
        {
            if (IsSpent)
                return false;
            Iterations++;
            var before = isDamped ? Largest(system.Residual) : 0;
            if (!system.ComputeStep())
                return false;
            system.Move(1);
            isSolved = system.Evaluate(point);
            if (isDamped && !isSolved)
                isSolved = Shorten(point, before);
            if (!double.IsFinite(Largest(system.Residual)))
                return false;
        }

        return isSolved;
    }

    private bool Shorten(AnalysisPoint point, double before)
    {
        var isSolved = false;
        for (var share = 1.0; share > ShortestShare && !isSolved && !(Largest(system.Residual) < before); share /= 2)
        {
            system.Move(-share / 2);
            isSolved = system.Evaluate(point);
        }

        return isSolved;
    }

    private static double Largest(ReadOnlySpan<double> values)
    {
        var largest = 0.0;
        foreach (var value in values)
        {
            if (!(Math.Abs(value) <= largest))
                largest = double.IsNaN(value) ? double.PositiveInfinity : Math.Abs(value);
        }

        return largest;
    }
}
