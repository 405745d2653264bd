using Loadmark.Planning.Decoding;
using Loadmark.Planning.LocalSearch;
using Loadmark.Planning.Model;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Search;

/// <summary>
/// Makes wirings of what a search in an easier problem has found. Such a solution is coarse: loads are merged in it and outlets pooled.
/// Yet what it says of noise and of leads is mostly right, which small changes at random rarely come upon; and what it leaves open they
/// decide at once.
/// </summary>
/// <param name="space">What wirings are made of.</param>
/// <param name="isOver">Whether to stop.</param>
internal sealed class RelaxedSolutionRepair(WiringSpace space, Func<bool> isOver)
{
    /// <summary>Changes for each load at one heat.</summary>
    private const int Effort = 200;

    /// <summary>
    /// How warm, time after time, in the costs of <see cref="Weights"/>: enough to trade single leads and noisy loads, and far too little
    /// to give up what the coarse solution says of returns.
    /// </summary>
    private static readonly double[] Heats = [1, 0.6, 1.5, 3];

    /// <summary>The best wiring so far; null when no coarse solution was repaired.</summary>
    public FoundWiring? Best { get; private set; }

    /// <summary>Repairs a coarse solution into a wiring and improves it.</summary>
    /// <param name="problem">The easier problem.</param>
    /// <param name="model">Its model.</param>
    /// <param name="values">The solution: the variables' values by their indices.</param>
    /// <param name="ideal">A vector of levels that no wiring's is before in order.</param>
    /// <param name="last">The last level that counts.</param>
    /// <returns>Whether the vector is reached, as far as its levels count.</returns>
    public bool Follow(PlanProblem problem, WiringModel model, long[] values, ReadOnlySpan<long> ideal, Level last = Level.Capacity)
    {
        var annealing = new SimulatedAnnealing(space, new RelaxedSolutionReader(problem, model, space).Read(values), 1, isOver);
        var isReached = false;
        foreach (var heat in Heats)
        {
            isReached = annealing.Run(ideal, Effort * annealing.Loads, last, heat);
            if (isReached || isOver())
                break;
        }

        if (Best is null || annealing.Best.Levels.AsSpan().SequenceCompareTo(Best.Levels) < 0)
            Best = annealing.Best;
        return isReached;
    }
}
