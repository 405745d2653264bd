namespace Loadmark.Core.Quantities;

/// <summary>The watt, unit of power (SI Brochure, 9th edition, table 4).</summary>
public readonly struct Watt : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "W";

    /// <inheritdoc/>
    public static bool TakesPrefix => false;

    /// <inheritdoc/>
    public static decimal Largest => 100_000m;
}
