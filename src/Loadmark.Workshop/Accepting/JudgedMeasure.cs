using Loadmark.Core.Acceptance;
using Loadmark.Core.Gear;

namespace Loadmark.Workshop.Accepting;

/// <summary>One reading at one plug, expected and judged.</summary>
public sealed record JudgedMeasure
{
    /// <summary>The plug.</summary>
    public required AcceptancePoint Point { get; init; }

    /// <summary>What is measured.</summary>
    public required BenchMeasure Measure { get; init; }

    /// <summary>The volts to expect, whichever way round; null where they are not known, and of a draw.</summary>
    public QuantityRange<Volt>? ExpectedVolts { get; init; }

    /// <summary>The volts that were read, above zero where the centre is positive; null where they were not, and of a draw.</summary>
    public Volts? ReadVolts { get; init; }

    /// <summary>The draw to expect; null where it is not known, and of volts.</summary>
    public QuantityRange<Ampere>? ExpectedAmps { get; init; }

    /// <summary>The draw that was read; null where it was not, and of volts.</summary>
    public Amps? ReadAmps { get; init; }

    /// <summary>The polarity that was read; null where a reading's sign was not told, and of alternating current.</summary>
    public Polarity? ReadPolarity { get; init; }

    /// <summary>What came of it; null where it was not measured.</summary>
    public Conformity? Judged { get; init; }

    /// <summary>How probable it is that the value is within what is expected, 0 to 1; null where that is not known.</summary>
    public double? Probability { get; init; }

    /// <summary>What it most likely means, in sentences; empty where it passed or was not measured.</summary>
    public string Means { get; init; } = "";

    /// <summary>What to do next; empty for nothing.</summary>
    public string Next { get; init; } = "";

    /// <summary>
    /// Whether nothing is proven without it. Of a draw it is not: it is measured where somebody wants to know it, and then has to be right.
    /// </summary>
    public bool IsNeeded => Measure != BenchMeasure.Draw;
}
