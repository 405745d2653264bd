using System.Globalization;

namespace Loadmark.Core.Quantities;

/// <summary>Writes numbers with units: short for people, exact for files.</summary>
internal static class QuantityText
{
    private static readonly (decimal Scale, string Prefix)[] Prefixes =
        [(1m, ""), (1e-3m, "m"), (1e-6m, "µ"), (1e-9m, "n"), (1e-12m, "p")];

    /// <summary>At most four significant digits; a prefix below one where the unit takes one.</summary>
    public static string Short(decimal value, string symbol, bool takesPrefix)
    {
        if (symbol == "m²")
            return $"{Significant(value * 1e6m)} mm²";

        var size = Math.Abs(value);
        if (!takesPrefix || size >= 1m || size == 0m)
            return $"{Significant(value)} {symbol}";

        foreach (var (scale, prefix) in Prefixes)
        {
            // 0.9996 mA would round to 1000 µA; the next prefix up reads better and is the same to four digits.
            if (size >= scale * 0.99995m)
                return $"{Significant(value / scale)} {prefix}{symbol}";
        }

        return $"{value.ToString("0.###E+0", CultureInfo.InvariantCulture)} {symbol}";
    }

    /// <summary>All digits, no prefix except mm² for a cross-section.</summary>
    public static string Exact(decimal value, string symbol) => symbol == "m²"
        ? $"{Plain(value * 1e6m).ToString(CultureInfo.InvariantCulture)} mm²"
        : $"{Plain(value).ToString(CultureInfo.InvariantCulture)} {symbol}";

    /// <summary>The same number without the trailing zeros that a decimal carries along (9.0 becomes 9).</summary>
    public static decimal Plain(decimal value) => value / 1.000000000000000000000000000000m;

    private static string Significant(decimal value)
    {
        var size = Math.Abs(value);
        var decimals = size >= 1000m ? 0 : size >= 100m ? 1 : size >= 10m ? 2 : 3;
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return Plain(rounded).ToString(CultureInfo.InvariantCulture);
    }
}
