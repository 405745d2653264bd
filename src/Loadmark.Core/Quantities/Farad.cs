namespace Loadmark.Core.Quantities;

/// <summary>The farad, unit of capacitance (SI Brochure, 9th edition, table 4).</summary>
public readonly struct Farad : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "F";

    /// <inheritdoc/>
    public static bool TakesPrefix => true;

    /// <inheritdoc/>
    public static decimal Largest => 10m;
}
