namespace Loadmark.Simulation.Spreading;

/// <summary>What a figure may be, in its SI unit: any value between two ends, each as likely as any other.</summary>
/// <param name="Low">The low end.</param>
/// <param name="High">The high end, no less than the low one.</param>
public readonly record struct FigureRange(double Low, double High)
{
    /// <summary>A figure that is known.</summary>
    public static FigureRange Single(double value) => new(value, value);

    /// <summary>A figure give or take a share of it.</summary>
    public static FigureRange Around(double value, double share) => new(value * (1 - share), value * (1 + share));

    /// <summary>The value at a share of the way from the low end to the high one; exactly the ends at 0 and 1.</summary>
    public double At(double share) => share >= 1 ? High : Low + (share * (High - Low));
}
