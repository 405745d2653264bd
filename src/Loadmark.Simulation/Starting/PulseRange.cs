using Loadmark.Core.Rigs;

namespace Loadmark.Simulation.Starting;

/// <summary>
/// What an outlet gives at most while input capacitors charge, where their capacitance or its resistance is assumed: from the milder of two
/// computations to the harder, see docs/theory/rig-circuit.md.
/// </summary>
/// <param name="Least">The peak with half the assumed capacitances and twice the assumed resistances.</param>
/// <param name="Most">The peak with twice the assumed capacitances and half the assumed resistances.</param>
/// <param name="OverLimitLeast">How long it was at its limit or over it in the milder one.</param>
/// <param name="OverLimitMost">How long it was at its limit or over it in the harder one.</param>
/// <param name="Assumed">What is assumed: "input capacitance", "source resistance"; at least one.</param>
public sealed record PulseRange(Amps Least, Amps Most, Seconds OverLimitLeast, Seconds OverLimitMost, ValueList<string> Assumed)
{
    /// <summary>The range with what it rests on: "99 mA to 396 mA (input capacitance assumed, at half and at double)".</summary>
    public override string ToString() => $"{Rounded(Least)} to {Rounded(Most)} ({string.Join(" and ", Assumed.Items)} assumed, at half and at double)";

    private static Amps Rounded(Amps amps) => new(Math.Round(amps.Value, 3));
}
