using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Spreading;

/// <summary>How far the figures of a rig may be from what it says.</summary>
public sealed record SpreadWidths
{
    /// <summary>Nothing is uncertain but draws that are known only as a range.</summary>
    public static SpreadWidths None { get; } = new()
    {
        MeasuredShare = 0,
        RatedLeast = 1,
        OutletShare = 0,
        UnregulatedShare = 0,
        LengthShare = 0,
        AssumedLengthRatio = 1,
    };

    /// <summary>A measured draw, give or take this share of it.</summary>
    public double MeasuredShare { get; init; } = CircuitDefaults.MeasuredDrawShare.Value;

    /// <summary>The least that a load draws, as a share of the printed current; that is the most.</summary>
    public double RatedLeast { get; init; } = CircuitDefaults.RatedDrawLeast.Value;

    /// <summary>The voltage of a regulated outlet, give or take this share.</summary>
    public double OutletShare { get; init; } = CircuitDefaults.OutletTolerance.Value;

    /// <summary>The voltage of an unregulated outlet, give or take this share: it follows the mains.</summary>
    public double UnregulatedShare { get; init; } = CircuitDefaults.UnregulatedTolerance.Value;

    /// <summary>The length of a lead that is given, give or take this share.</summary>
    public double LengthShare { get; init; } = CircuitDefaults.LengthTolerance.Value;

    /// <summary>A length that is not given is between the common one divided by this and multiplied by this, 1 or more.</summary>
    public double AssumedLengthRatio { get; init; } = CircuitDefaults.AssumedLengthRatio.Value;
}
