using System.Collections.Immutable;
using System.Globalization;

namespace Loadmark.Drawing.Plots;

/// <summary>An axis with its range, its ticks at round numbers, and the prefix of its unit.</summary>
internal sealed class AxisScale
{
    private static readonly (double Scale, string Prefix)[] Prefixes =
        [(1e9, "G"), (1e6, "M"), (1e3, "k"), (1, ""), (1e-3, "m"), (1e-6, "µ"), (1e-9, "n"), (1e-12, "p")];

    private readonly double _scale;
    private readonly double _step;

    private AxisScale(double low, double high, double step, ImmutableArray<double> ticks, double scale, string unit)
    {
        Low = low;
        High = high;
        _step = step;
        _scale = scale;
        Ticks = ticks;
        Unit = unit;
    }

    public double Low { get; }

    public double High { get; }

    public ImmutableArray<double> Ticks { get; }

    /// <summary>The unit with its prefix: "mA"; empty for a plain number.</summary>
    public string Unit { get; }

    /// <summary>Whether a value can stand on an axis.</summary>
    public static bool CanShow(double value) => double.IsFinite(value) && Math.Abs(value) < 1e15;

    /// <summary>Finds the range, the ticks and the prefix.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="values">What is to be seen; what is no number is passed over.</param>
    /// <param name="most">The most ticks there is room for, at least 2.</param>
    /// <param name="isTight">Whether the axis ends where the data end rather than at the next tick.</param>
    public static AxisScale Of(PlotAxis axis, IEnumerable<double> values, int most, bool isTight)
    {
        var (low, high) = axis.FromZero ? (0.0, 0.0) : (double.MaxValue, double.MinValue);
        foreach (var value in values)
        {
            if (CanShow(value))
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
        }

        // What rounding leaves below zero is no reason to go there.
        if (low < 0 && low > -0.01 * high)
            low = 0;
        low = axis.Low ?? (low <= high ? low : 0);
        high = axis.High ?? (high >= low ? high : low);
        if (!(high - low > Math.Max(Math.Abs(low), Math.Abs(high)) * 1e-9) || high - low < 1e-12)
            (low, high) = low == 0 ? (0, 1) : (low - (Math.Abs(low) * 0.1), low + (Math.Abs(low) * 0.1));

        var step = NiceStep((high - low) / Math.Max(1, most - 1));
        if (!isTight)
        {
            low = axis.Low ?? (Math.Floor((low / step) + 1e-9) * step);
            high = axis.High ?? (Math.Ceiling((high / step) - 1e-9) * step);
        }

        var ticks = ImmutableArray.CreateBuilder<double>();
        for (var index = Math.Ceiling((low / step) - 1e-9); index * step <= high + (step * 1e-9); index++)
            ticks.Add(index * step);

        var largest = Math.Max(Math.Abs(low), Math.Abs(high));
        var (scale, prefix) = axis.TakesPrefix && axis.Unit.Length > 0
            ? Prefixes.FirstOrDefault(entry => largest >= entry.Scale * 0.9999, Prefixes[^1])
            : (1.0, "");
        return new AxisScale(low, high, step, ticks.ToImmutable(), scale, prefix + axis.Unit);
    }

    /// <summary>A tick as text, without unit.</summary>
    public string TickText(double tick) => Number(tick / _scale, Math.Max(0, (int)Math.Ceiling(-Math.Log10(_step / _scale) - 1e-9)));

    /// <summary>A value with its unit, to a five-hundredth of the range or finer.</summary>
    public string ValueText(double value)
    {
        var text = Number(value / _scale, Math.Clamp((int)Math.Ceiling(-Math.Log10((High - Low) / 500 / _scale) - 1e-9), 0, 6));
        return Unit.Length == 0 ? text : $"{text} {Unit}";
    }

    private static string Number(double value, int decimals)
    {
        var rounded = Math.Round(value, Math.Min(decimals, 15));
        return (rounded == 0 ? 0 : rounded).ToString($"F{decimals.ToString(CultureInfo.InvariantCulture)}", CultureInfo.InvariantCulture);
    }

    /// <summary>A level with its unit, without zeros that say nothing.</summary>
    public string LevelText(double value)
    {
        var text = Number(value / _scale, 4);
        text = text.TrimEnd('0').TrimEnd('.');
        return Unit.Length == 0 ? text : $"{text} {Unit}";
    }

    /// <summary>The smallest of 1, 2 and 5 times a power of ten that is at least as large.</summary>
    private static double NiceStep(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        foreach (var factor in (ReadOnlySpan<double>)[1, 2, 5])
        {
            if (factor * power >= least * (1 - 1e-9))
                return factor * power;
        }

        return 10 * power;
    }
}
