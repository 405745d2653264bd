using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Decomposition;

/// <summary>The problem that a rig is with what the options of a plan ask for.</summary>
internal static class AskedProblem
{
    /// <summary>Builds it.</summary>
    /// <param name="rig">The rig, or a part of one; of its wiring only pinned feeds count.</param>
    /// <param name="options">What is asked for; how long it may take does not count here.</param>
    public static PlanProblem Of(Rig rig, PlanOptions options) =>
        new PlanProblemBuilder(rig, options.Certain, options.Inputs, options.Present, options.AcrossBoards, options.IsQuiet)
            .Build(options.Only);
}
