namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Writes a figure so that the label reader reads exactly the same number back.</summary>
internal static class LabelFigure
{
    /// <summary>The most digits the reader takes.</summary>
    private const int MostDigits = 15;

    /// <summary>The figure with its unit, in full; with a smaller unit where the number would be too long.</summary>
    /// <param name="value">In volts, amperes, watts or hertz.</param>
    /// <param name="unit">The unit's symbol.</param>
    public static string Write(decimal value, string unit)
    {
        var plain = DecimalText.Write(value);
        if (Digits(plain) <= MostDigits || unit == "Hz")
            return plain + unit;
        var thousandths = DecimalText.Write(value * 1000m);
        if (Digits(thousandths) <= MostDigits || unit != "A")
            return $"{thousandths}m{unit}";
        return $"{DecimalText.Write(value * 1_000_000m)}uA";
    }

    private static int Digits(string number) => number.Count(char.IsAsciiDigit);
}
