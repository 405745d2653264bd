namespace Loadmark.Core.Quantities;

/// <summary>The ampere, unit of electric current (SI Brochure, 9th edition, section 2.3.1).</summary>
public readonly struct Ampere : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "A";

    /// <inheritdoc/>
    public static bool TakesPrefix => true;

    /// <inheritdoc/>
    public static decimal Largest => 1_000m;
}
