namespace Loadmark.Core.Quantities;

/// <summary>The ohm, unit of resistance (SI Brochure, 9th edition, table 4).</summary>
public readonly struct Ohm : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "Ω";

    /// <inheritdoc/>
    public static bool TakesPrefix => true;

    /// <inheritdoc/>
    public static decimal Largest => 10_000_000m;
}
