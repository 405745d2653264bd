namespace Loadmark.Core.Quantities;

/// <summary>The square metre, unit of area; here the cross-section of a conductor, written in mm².</summary>
public readonly struct SquareMetre : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "m²";

    /// <inheritdoc/>
    public static bool TakesPrefix => false;

    /// <inheritdoc/>
    public static decimal Largest => 0.001m;
}
