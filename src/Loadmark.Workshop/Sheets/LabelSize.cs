namespace Loadmark.Workshop.Sheets;

/// <summary>The size of a label.</summary>
/// <param name="WidthMm">Its width, mm, 15 to 190.</param>
/// <param name="HeightMm">Its height, mm, 8 to 100.</param>
public sealed record LabelSize(double WidthMm, double HeightMm)
{
    /// <summary>What wraps around a lead as a flag.</summary>
    public static LabelSize Common { get; } = new(45, 16);

    /// <summary>Whether a label may have this size.</summary>
    public bool IsPossible => WidthMm is >= 15 and <= 190 && HeightMm is >= 8 and <= 100;
}
