namespace Loadmark.Core.Quantities;

/// <summary>The hertz, unit of frequency (SI Brochure, 9th edition, table 4); here of a supply, not of a signal.</summary>
public readonly struct Hertz : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "Hz";

    /// <inheritdoc/>
    public static bool TakesPrefix => false;

    /// <inheritdoc/>
    public static decimal Largest => 1_000m;
}
