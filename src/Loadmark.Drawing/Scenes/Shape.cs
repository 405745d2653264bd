namespace Loadmark.Drawing.Scenes;

/// <summary>One mark on the paper.</summary>
/// <param name="Ink">What it is for.</param>
public abstract record Shape(Ink Ink)
{
    /// <summary>How many variants the inks of series have.</summary>
    public const int Variants = 6;

    /// <summary>
    /// Which of several of the same ink, 0 to <see cref="Variants"/> − 1: lines of a plot differ in colour and dashes by it.
    /// </summary>
    public int Variant { get; init; }
}
