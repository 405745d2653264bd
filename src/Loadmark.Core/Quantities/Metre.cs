namespace Loadmark.Core.Quantities;

/// <summary>The metre, unit of length (SI Brochure, 9th edition, section 2.3.1).</summary>
public readonly struct Metre : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "m";

    /// <inheritdoc/>
    public static bool TakesPrefix => false;

    /// <inheritdoc/>
    public static decimal Largest => 1_000m;
}
