using System.Globalization;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Display;

/// <summary>
/// How figures are written for people, wherever they stand: terminal, page, drawing, paper. What is printed on a label or typed is shown to
/// four digits, as <see cref="Quantity{TUnit}.ToString"/> writes it; what is computed, as finely as the computation is worth. Files and
/// JSON have ways of their own, which lose nothing.
/// </summary>
public static class FigureDisplay
{
    /// <summary>What stands for a figure that is not known.</summary>
    public const string Unknown = "?";

    /// <summary>The decimals of a computed voltage in volts: to the millivolt.</summary>
    public const int VoltDecimals = 3;

    /// <summary>The decimals of a computed current in amperes: to a tenth of a milliampere.</summary>
    public const int AmpDecimals = 4;

    /// <summary>The decimals of a computed time in seconds: to a tenth of a millisecond.</summary>
    public const int SecondDecimals = 4;

    private const int GramsInKilogram = 1000;
    private const int SaidDigits = 3;

    /// <summary>The most decimals that the type of the figures can be rounded to.</summary>
    private const int MostDecimals = 28;

    /// <summary>A figure as it was printed or typed, to four digits.</summary>
    /// <param name="figure">The figure; null when it is not known.</param>
    public static string Printed<TUnit>(Quantity<TUnit>? figure)
        where TUnit : struct, IUnit => figure?.ToString() ?? Unknown;

    /// <summary>A range of figures as it was printed or typed.</summary>
    /// <param name="range">The range; null when it is not known.</param>
    public static string Printed<TUnit>(QuantityRange<TUnit>? range)
        where TUnit : struct, IUnit => range?.ToString() ?? Unknown;

    /// <summary>A figure as it was printed or typed, without its origin.</summary>
    /// <param name="figure">The figure; null when it is not known.</param>
    public static string Printed<TUnit>(Figure<Quantity<TUnit>>? figure)
        where TUnit : struct, IUnit => Printed(figure?.Value);

    /// <summary>A computed voltage.</summary>
    /// <param name="volts">In volts; null when it is not known.</param>
    public static string Computed(Volts? volts) => Printed(Rounded(volts, VoltDecimals));

    /// <summary>A computed current.</summary>
    /// <param name="amps">In amperes; null when it is not known.</param>
    public static string Computed(Amps? amps) => Printed(Rounded(amps, AmpDecimals));

    /// <summary>A computed time.</summary>
    /// <param name="time">In seconds; null when it is not known.</param>
    public static string Computed(Seconds? time) => Printed(Rounded(time, SecondDecimals));

    /// <summary>A voltage that was computed, to 10 mV.</summary>
    /// <param name="volts">In volts; null when it is not known.</param>
    public static string Said(Volts? volts) => Printed(Rounded(volts, 2));

    /// <summary>
    /// A range of voltages that was computed, to 10 mV, rounded outwards: no value within it reads as outside. "8.55 to 9.45 V".
    /// </summary>
    /// <param name="range">In volts; null when it is not known.</param>
    public static string Outwards(QuantityRange<Volt>? range)
    {
        if (range is not { } known)
            return Unknown;
        var (low, high) = (Math.Floor(known.Low.Value * 100) / 100, Math.Ceiling(known.High.Value * 100) / 100);
        return low == high ? $"{new Volts(low)}" : $"{Number(low)} to {new Volts(high)}";
    }

    /// <summary>
    /// A current that was computed or added up, with the three digits that a person would say. Beside a limit it never reads as the limit
    /// without being it: then with four.
    /// </summary>
    /// <param name="amps">In amperes; null when it is not known.</param>
    /// <param name="beside">The limit that it stands beside; null for none.</param>
    public static string Said(Amps? amps, Amps? beside = null) => Significant(amps, beside);

    /// <summary>A power that was computed or added up, as <see cref="Said(Amps?, Amps?)"/> writes a current.</summary>
    /// <param name="watts">In watts; null when it is not known.</param>
    /// <param name="beside">The limit that it stands beside; null for none.</param>
    public static string Said(Watts? watts, Watts? beside = null) => Significant(watts, beside);

    /// <summary>A time that was computed, to three digits.</summary>
    /// <param name="time">In seconds; null when it is not known.</param>
    public static string Said(Seconds? time) => Significant(time, null);

    /// <summary>What is drawn in all, as the total beside it is printed: in amps, in watts or in both.</summary>
    /// <param name="total">What is drawn.</param>
    /// <param name="beside">The total that it stands beside; null for none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="total"/> is null.</exception>
    public static string SaidTotal(SupplyTotal total, SupplyTotal? beside = null)
    {
        ArgumentNullException.ThrowIfNull(total);
        var amps = total.Amps is null ? null : Said(total.Amps, beside?.Amps);
        return amps is not null && total.Watts is null ? amps : $"{(amps is null ? "" : amps + ", ")}{Said(total.Watts, beside?.Watts)}";
    }

    /// <summary>What stays free, with as many digits as a person would say and never more than there is: "1.65 A", "488 mA".</summary>
    /// <param name="amps">The current.</param>
    public static string Spare(Amps amps) =>
        Printed<Ampere>(new Amps(Math.Floor(amps.Value * (amps.Value >= 1 ? 100 : 1000)) / (amps.Value >= 1 ? 100 : 1000)));

    /// <summary>A share as per cent, to two decimals: "10 %".</summary>
    /// <param name="share">The share; 1 is the whole.</param>
    public static string Percent(decimal share) => $"{DecimalText.Write(Math.Round(share * 100, 2))} %";

    /// <summary>A share of samples to a tenth of a per cent, and never "100 %" or "0 %" of what is not quite that.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    public static string Chance(double share)
    {
        var percent = Math.Round(100 * share, 1);
        return (percent, share) switch
        {
            ( >= 100, < 1) => "over 99.9 %",
            ( <= 0, > 0) => "under 0.1 %",
            _ => string.Create(CultureInfo.InvariantCulture, $"{percent:0.#} %"),
        };
    }

    /// <summary>A plain number to three decimals.</summary>
    /// <param name="number">A count, or a figure whose unit stands elsewhere.</param>
    public static string Number(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A price with two decimals, in the money of the price list.</summary>
    /// <param name="price">The price.</param>
    public static string Price(decimal price) => price.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A mass in grams, from 1 kg up in kilograms.</summary>
    /// <param name="grams">In grams.</param>
    public static string Mass(decimal grams) => grams < GramsInKilogram
        ? string.Create(CultureInfo.InvariantCulture, $"{grams:0.##} g")
        : string.Create(CultureInfo.InvariantCulture, $"{grams / GramsInKilogram:0.00} kg");

    /// <summary>The size of a file in kilobytes, from 1 MB up in megabytes.</summary>
    /// <param name="bytes">In bytes.</param>
    public static string Size(long bytes) => bytes < 1_000_000
        ? string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e3:0} kB")
        : string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB");

    private static string Significant<TUnit>(Quantity<TUnit>? figure, Quantity<TUnit>? beside)
        where TUnit : struct, IUnit
    {
        if (figure is not { Value: not 0 } known)
            return Printed(figure);
        var place = (int)Math.Floor(Math.Log10((double)Math.Abs(known.Value))) - SaidDigits + 1;
        var said = place < 0
            ? Math.Round(known.Value, Math.Min(-place, MostDecimals), MidpointRounding.AwayFromZero)
            : Math.Round(known.Value, MidpointRounding.AwayFromZero);
        return Printed<TUnit>(said == beside?.Value ? known : new Quantity<TUnit>(said));
    }

    private static Quantity<TUnit>? Rounded<TUnit>(Quantity<TUnit>? figure, int decimals)
        where TUnit : struct, IUnit => figure is { } known ? new Quantity<TUnit>(Math.Round(known.Value, decimals)) : null;
}
