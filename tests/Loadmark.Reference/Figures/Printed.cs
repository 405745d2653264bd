using System.Globalization;

namespace Loadmark.Reference.Figures;

/// <summary>
/// The rule of tolerance for the whole project: a computed value agrees with a printed one when it would be rounded to
/// it, that is, when it is no further off than half a unit of the last digit printed; and never further off than 2 %,
/// because tables drop trailing zeros ("0.1" for 0.100) and half a unit of those would let half of the value pass.
/// </summary>
public static class Printed
{
    /// <summary>The share of the printed value that no tolerance goes over.</summary>
    public const decimal CoarsestShare = 0.02m;

    /// <summary>The tolerance of a printed value, by the rule above.</summary>
    /// <param name="printed">The value with the decimals it is printed with: 2.350 is not 2.35.</param>
    public static decimal Tolerance(decimal printed) =>
        Math.Min(HalfUnit(printed), Math.Abs(printed) * CoarsestShare);

    /// <summary>Half a unit of the last digit printed.</summary>
    public static decimal HalfUnit(decimal printed)
    {
        var unit = 1m;
        for (var place = 0; place < printed.Scale; place++)
            unit /= 10;
        return unit / 2;
    }

    /// <summary>Fails, naming the source, unless the computed value agrees with the printed one.</summary>
    public static void Agrees(decimal printed, decimal computed, string source) =>
        Within(Tolerance(printed), printed, computed, source);

    /// <summary>Fails, naming the source, when the computed value is further from the printed one than a tolerance.</summary>
    public static void Within(decimal tolerance, decimal printed, decimal computed, string source)
    {
        var off = Math.Abs(computed - printed);
        Assert.True(
            off <= tolerance,
            string.Create(CultureInfo.InvariantCulture, $"{source} prints {printed}, computed {computed}: {off} off, {tolerance} allowed."));
    }
}
