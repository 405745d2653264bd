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
    /// <summary>Below it a milliampere is a large share, and a hundredth of one is shown.</summary>
    private const decimal FineBelow = 0.01m;

    /// <summary>The two peaks, to the milliampere: "99 mA to 396 mA".</summary>
    public string Peaks => $"{Rounded(Least)} to {Rounded(Most)}";

    /// <summary>
    /// What the range rests on, as a clause: "the charging of input capacitors decides it, or may, and how much they take is not known:
    /// ...".
    /// </summary>
    public string Because =>
        "the charging of input capacitors decides it, or may, and how much they take is not known: "
        + $"computed with {string.Join(" and ", Assumed.Items)} at half and at double of what is assumed";

    /// <summary>The range with what it rests on: "99 mA to 396 mA (input capacitance assumed, at half and at double)".</summary>
    public override string ToString() => $"{Peaks} ({string.Join(" and ", Assumed.Items)} assumed, at half and at double)";

    private static Amps Rounded(Amps amps) => new(Math.Round(amps.Value, amps.Value < FineBelow ? 5 : 3));
}
