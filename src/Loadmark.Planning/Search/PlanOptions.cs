using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Search;

/// <summary>How to plan.</summary>
public sealed record PlanOptions
{
    /// <summary>The supplies that may be used; null for all.</summary>
    public IReadOnlySet<string>? Only { get; init; }

    /// <summary>
    /// The supplies of which only what is known to suit a load may feed it; null for none. Others may feed what they are not known to
    /// harm, which a plan avoids where it can.
    /// </summary>
    internal IReadOnlySet<string>? Certain { get; init; }

    /// <summary>
    /// The supplies that are fed by others and are to be fed by the plan; those of the rest that no pinned feed feeds stay idle.
    /// </summary>
    internal PlannedInputs Inputs { get; init; } = PlannedInputs.None;

    /// <summary>
    /// Whether as few as possible of the loads that are wired now are moved to another outlet, setting or lead: before headroom, noise
    /// and all that follows, but never for a load that could be fed, or one that need not be on what is not known to suit it.
    /// </summary>
    public bool FewestMoves { get; init; }

    /// <summary>Whether supplies of one board may feed loads of another; what is of no board goes with any in any case.</summary>
    public bool AcrossBoards { get; init; }

    /// <summary>Whether no return may have a finding of noise: loads that mind company share theirs with nobody.</summary>
    internal bool IsQuiet { get; init; }

    /// <summary>The present wiring, where as few as possible of its loads are to be moved; null where that does not count.</summary>
    internal PresentWiring? Present { get; init; }

    /// <summary>
    /// Whether only what a short local search finds is answered where it is asked if every load can be fed: the same answer however busy
    /// the machine is, and no proof that they cannot.
    /// </summary>
    internal bool IsBrief { get; init; }

    /// <summary>
    /// Told what is being looked for, each time that changes; null for nobody. It is called on threads of the planner, at times on two at
    /// once. Of a rig that falls into parts that have nothing to do with one another, each part is looked at by itself.
    /// </summary>
    public IProgress<PlanProgress>? Progress { get; init; }

    /// <summary>How long to look at the most; ten seconds unless set.</summary>
    public TimeSpan TimeLimit { get; init; } = TimeSpan.FromSeconds(10);
}
