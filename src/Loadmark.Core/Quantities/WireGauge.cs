namespace Loadmark.Core.Quantities;

/// <summary>The American wire gauge: numbers for conductor sizes, thinner as the number grows.</summary>
public static class WireGauge
{
    /// <summary>The thickest gauge this program takes; thicker wire does not go into a d.c. plug.</summary>
    public const int Thickest = 10;

    /// <summary>The thinnest gauge this program takes.</summary>
    public const int Thinnest = 40;

    /// <summary>
    /// The cross-section of a solid conductor: d = 0.127 mm × 92^((36 − n)/39), A = π·d²/4 (ASTM B258).
    /// Stranded wire of the same gauge has 4 to 16 % more copper, by the strandings sold.
    /// </summary>
    /// <param name="gauge">From <see cref="Thickest"/> to <see cref="Thinnest"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is outside that range.</exception>
    public static Quantity<SquareMetre> Area(int gauge)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(gauge, Thickest);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(gauge, Thinnest);

        var millimetres = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);

        // Nine decimals of a mm² are finer than any wire is drawn, and few enough digits to be written and read back.
        var area = Math.Round((decimal)(Math.PI * millimetres * millimetres / 4), 9);
        return new Quantity<SquareMetre>(area * 1e-6m);
    }
}
