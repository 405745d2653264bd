using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Spreading;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Answers;

/// <summary>What the answers about the steady state and about the first seconds have in common.</summary>
/// <param name="Rig">The rig's name.</param>
/// <param name="Totals">Limits that several outlets share, and what these give.</param>
/// <param name="Check">What the rules say, the circuit's among them.</param>
/// <param name="Assumptions">Figures that the rig does not say.</param>
/// <param name="Untold">What cannot be told.</param>
/// <param name="Spread">What becomes of the figures when those of the rig are not known exactly; null where nobody asked.</param>
internal sealed record CircuitRest(
    string Rig,
    ValueList<TotalGiven> Totals,
    CheckResult Check,
    ValueList<Assumption> Assumptions,
    ValueList<Untold> Untold,
    SpreadResult? Spread);
