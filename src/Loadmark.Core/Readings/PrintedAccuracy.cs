using System.Globalization;

namespace Loadmark.Core.Readings;

/// <summary>
/// How far a meter may be off, as its maker prints it: shares of the reading and of the range, steps of the last digit, and an amount. All
/// of it is added up. <see cref="MeterAccuracy"/> is what remains of it once digits and range are known.
/// </summary>
/// <typeparam name="TUnit">The unit of what is measured.</typeparam>
/// <param name="OfReading">The share of the reading, 0 to below 1: 0.005 for 0.5 %.</param>
/// <param name="OfRange">The share of the range's full scale, 0 to below 1.</param>
/// <param name="Digits">How many steps of the display's last digit, zero or more.</param>
/// <param name="Plus">What is added whatever the reading, zero or more.</param>
public readonly record struct PrintedAccuracy<TUnit>(decimal OfReading, decimal OfRange, decimal Digits, Quantity<TUnit> Plus)
    where TUnit : struct, IUnit
{
    /// <summary>
    /// The most that a reading may be off, to either side: the half-width of its band. Source of the sum: makers' own specifications,
    /// ±(share of reading + steps of the last digit).
    /// </summary>
    /// <param name="reading">What the meter showed; its sign does not count.</param>
    /// <param name="step">One step of the last digit (<see cref="DisplayedValue{TUnit}.Step"/>), over zero; null where not known.</param>
    /// <param name="range">The full scale of the range that was used, over zero; null where it is not known.</param>
    /// <returns>Null where the accuracy is printed in digits or as a share of the range, and that is not known.</returns>
    public Quantity<TUnit>? Within(Quantity<TUnit> reading, Quantity<TUnit>? step = null, Quantity<TUnit>? range = null)
    {
        if ((Digits != 0 && step is null) || (OfRange != 0 && range is null))
            return null;
        return new Quantity<TUnit>(OfReading * Math.Abs(reading.Value)) + (OfRange * (range ?? Quantity<TUnit>.Zero))
            + (Digits * (step ?? Quantity<TUnit>.Zero)) + Plus;
    }

    /// <summary>
    /// The standard uncertainty of a reading, in the unit: the half-width over √3, as each value within the band is as likely (JCGM
    /// 100:2008, GUM, 4.3.7).
    /// </summary>
    /// <inheritdoc cref="Within" path="/param"/>
    /// <inheritdoc cref="Within" path="/returns"/>
    public double? StandardUncertainty(Quantity<TUnit> reading, Quantity<TUnit>? step = null, Quantity<TUnit>? range = null) =>
        (double?)Within(reading, step, range)?.Value / Math.Sqrt(3);

    /// <summary>The accuracy as it is typed: <c>0.5 % + 0.1 % of range + 2 digits + 3 mV</c>.</summary>
    public override string ToString()
    {
        var parts = new List<string>();
        if (OfReading != 0)
            parts.Add(Percent(OfReading));
        if (OfRange != 0)
            parts.Add($"{Percent(OfRange)} of range");
        if (Digits != 0)
            parts.Add($"{DecimalText.Write(Digits)} {(Digits == 1 ? "digit" : "digits")}");
        if (Plus != Quantity<TUnit>.Zero || parts.Count == 0)
            parts.Add(Plus.ToExactString());
        return string.Join(" + ", parts);
    }

    private static string Percent(decimal share) => string.Create(CultureInfo.InvariantCulture, $"{DecimalText.Write(share * 100)} %");
}
