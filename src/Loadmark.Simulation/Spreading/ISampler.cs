using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Spreading;

/// <summary>Computes a rig's circuit with the figures that are in force, for one thread.</summary>
internal interface ISampler
{
    /// <summary>The circuit whose figures are changed.</summary>
    RigCircuit Circuit { get; }

    /// <summary>Computes one sample: the circuit with the figures that it has now.</summary>
    /// <param name="figures">Where to put two figures of each load, then two of each outlet. NaN for what cannot be told, infinite for
    /// never.</param>
    /// <param name="states">Where to put the state of each load.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>Whether all of it could be computed.</returns>
    bool Sample(Span<double> figures, Span<LoadState> states, CancellationToken cancellation);
}
