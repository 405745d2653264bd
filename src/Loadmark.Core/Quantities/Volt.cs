namespace Loadmark.Core.Quantities;

/// <summary>The volt, unit of electric potential difference (SI Brochure, 9th edition, table 4).</summary>
public readonly struct Volt : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "V";

    /// <inheritdoc/>
    public static bool TakesPrefix => true;

    /// <inheritdoc/>
    public static decimal Largest => 1_000m;
}
