using Loadmark.Core.Rigs;

namespace Loadmark.Planning;

/// <summary>Plans the wiring of a rig.</summary>
public static class RigPlanner
{
    /// <summary>Finds the best wiring under the objective's order. The same rig and options give the same plan.</summary>
    /// <param name="rig">The rig; of its own wiring only pinned feeds count.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    public static PlanResult Plan(Rig rig, PlanOptions options, CancellationToken cancellation = default) => throw new NotImplementedException();
}
