namespace Loadmark.Core.Quantities;

/// <summary>The second, unit of time (SI Brochure, 9th edition, section 2.3.1).</summary>
public readonly struct Second : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "s";

    /// <inheritdoc/>
    public static bool TakesPrefix => true;

    /// <inheritdoc/>
    public static decimal Largest => 600m;
}
