namespace Loadmark.Simulation.Wiring;

/// <summary>
/// How much may be computed for one question about a rig, counted in equations evaluated and not in seconds, so that the same rig is
/// answered alike on every machine. What a rig of this size needs in any ordinary case is well within it.
/// </summary>
internal sealed class WorkBudget
{
    /// <summary>
    /// What any one search or run may take, in equations evaluated: each of the examples needs under a tenth of it.
    /// </summary>
    private const long Floor = 40_000_000;

    /// <summary>What the search for remedies may take for each equation of the circuit, where that is more.</summary>
    private const long EachEquation = 4_000;

    /// <summary>To lay out and check a rig takes about as long as to evaluate each of its equations so many times.</summary>
    private const long LayoutCost = 100;

    /// <summary>
    /// What one search or run of a part may take for each of its equations, where that is more than its share: an ordinary start
    /// takes 1,000 to 1,500, one that never ends 20,000 to 30,000 until it is seen to repeat.
    /// </summary>
    private const long EachEquationOfPart = 60_000;

    private long _left;

    private WorkBudget(long most) => _left = most;

    /// <summary>Whether nothing is left.</summary>
    public bool IsSpent => _left <= 0;

    /// <summary>The budget for seeking what would mend a rig, all of its findings together.</summary>
    /// <param name="circuit">The rig's circuit.</param>
    public static WorkBudget ForRemedies(RigCircuit circuit) => new(Math.Max(Floor, EachEquation * Equations(circuit)));

    /// <summary>
    /// What one search for a steady state or one run of the first seconds may take in a part of a circuit, in equations evaluated: in
    /// proportion to its equations, so that a rig of many parts takes no more than one of the same size in one part.
    /// </summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="part">The part, by its place.</param>
    public static long OfPart(RigCircuit circuit, int part)
    {
        var size = circuit.Parts[part].Network.Size;
        return Math.Max(Floor * size / Math.Max(1, Equations(circuit)), EachEquationOfPart * size);
    }

    /// <summary>What was computed in a circuit since it was made.</summary>
    /// <param name="circuit">The circuit.</param>
    public static long WorkOf(RigCircuit circuit)
    {
        var work = 0L;
        foreach (var part in circuit.Parts)
            work += part.Network.Work;
        return work;
    }

    /// <summary>Takes from what is left.</summary>
    /// <param name="work">Equations evaluated, 0 or more.</param>
    public void Spend(long work) => _left -= work;

    /// <summary>Takes the equations of a circuit that was laid out and made ready, which costs more than to evaluate them.</summary>
    /// <param name="circuit">The circuit.</param>
    public void SpendLayout(RigCircuit circuit) => _left -= LayoutCost * Equations(circuit);

    private static long Equations(RigCircuit circuit)
    {
        var equations = 0L;
        foreach (var part in circuit.Parts)
            equations += part.Network.Size;
        return equations;
    }
}
