using System.Globalization;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Readings;

/// <summary>Makes one figure of several readings, and says how it came about.</summary>
public static class DrawEstimate
{
    private const int DigitsOfUncertainty = 2;
    private const int DigitsWithoutUncertainty = 4;

    /// <summary>What the readings of one kind come to; null when there are none of it.</summary>
    /// <param name="readings">The readings, of both kinds.</param>
    /// <param name="kind">Which of them.</param>
    public static MeasuredDraw? Of(IEnumerable<DrawReading> readings, DrawKind kind)
    {
        ArgumentNullException.ThrowIfNull(readings);
        List<DrawReading> all = [.. readings.Where(reading => reading.Kind == kind)];
        if (all.Count == 0)
            return null;

        var scores = OutlierTest.Scores([.. all.Select(static reading => (double)reading.Current.Value)]);
        ValueList<int> leftOut = [.. Enumerable.Range(0, scores.Length).Where(index => Math.Abs(scores[index]) > OutlierTest.Limit)];
        List<DrawReading> counted = [.. all.Where((_, index) => !leftOut.Items.Contains(index))];
        decimal[] amps = [.. counted.Select(static reading => reading.Current.Value)];
        var mean = amps.Average();
        double? deviation = amps.Length < 2 ? null : Math.Sqrt(amps.Sum(value => Math.Pow((double)(value - mean), 2)) / (amps.Length - 1));
        var draw = new MeasuredDraw
        {
            Mean = new Amps(mean),
            Figure = new Amps(mean),
            Duration = counted.Max(static reading => reading.Duration),
            Count = all.Count,
            LeftOut = leftOut,
            Scores = [.. scores],
            Least = new Amps(amps.Min()),
            Most = new Amps(amps.Max()),
            Deviation = deviation,
            FromScatter = deviation / Math.Sqrt(amps.Length),
            FromMeter = counted.TrueForAll(static reading => reading.Meter is not null)
                ? counted.Average(static reading => (double)reading.Meter!.Value.Within(reading.Current).Value / Math.Sqrt(3))
                : null,
        };
        return draw with { Figure = new Amps(Rounded(mean, draw.Uncertainty)) };
    }

    /// <summary>How a figure came about, in a sentence for people.</summary>
    /// <param name="draw">The figure.</param>
    public static string Explain(MeasuredDraw draw)
    {
        ArgumentNullException.ThrowIfNull(draw);
        var parts = new List<string> { draw.Count == 1 ? "one reading" : $"mean of {draw.Counted} readings" };
        if (draw.LeftOut.Count > 0)
            parts.Add($"{draw.LeftOut.Count} left out as too far from the rest");
        if (draw.Counted > 1)
            parts.Add($"from {draw.Least} to {draw.Most}");
        parts.Add(draw switch
        {
            { FromScatter: not null, FromMeter: not null } =>
                $"standard uncertainty {Show(draw.Uncertainty)} (readings {Show(draw.FromScatter)}, meter {Show(draw.FromMeter)})",
            { FromScatter: not null } =>
                $"standard uncertainty at least {Show(draw.FromScatter)}, from the readings; the meter's accuracy is not known",
            { FromMeter: not null } =>
                $"standard uncertainty at least {Show(draw.FromMeter)}, from the meter; one reading does not tell how much it varies",
            _ => "how sure it is cannot be told: the meter's accuracy is not known, and one reading does not tell how much it varies",
        });
        if (draw.Count is > 1 and < OutlierTest.Fewest)
            parts.Add($"too few readings to tell whether one of them is wrong (that takes {OutlierTest.Fewest})");
        return string.Join("; ", parts);
    }

    private static string Show(double? amps) => $"{new Amps(Round((decimal)amps!.Value, Place((decimal)amps.Value, DigitsOfUncertainty)))}";

    private static decimal Rounded(decimal mean, double? uncertainty) =>
        Round(
            mean, uncertainty is > 1e-12 ? Place((decimal)uncertainty.Value, DigitsOfUncertainty) : Place(mean, DigitsWithoutUncertainty));

    /// <summary>Rounds half away from zero, to a number of decimals that may be below zero.</summary>
    private static decimal Round(decimal value, int decimals) => decimal.Parse(
        Math.Round(value, Math.Clamp(decimals, 0, 12), MidpointRounding.AwayFromZero)
            .ToString("0.############", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The decimals that show a number with so many digits.</summary>
    private static int Place(decimal value, int digits) =>
        value == 0 ? digits : digits - 1 - (int)Math.Floor(Math.Log10((double)Math.Abs(value)));
}
