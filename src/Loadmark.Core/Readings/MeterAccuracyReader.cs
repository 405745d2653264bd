using System.Globalization;

namespace Loadmark.Core.Readings;

/// <summary>
/// Reads a meter's accuracy as it is typed: <c>1 % + 2 mA</c>, <c>1.5 % + 3 counts of 0.1 mA</c>, <c>2 mA</c>, <c>1 %</c>.
/// </summary>
public static class MeterAccuracyReader
{
    private static readonly string[] CountWords = ["counts of", "count of", "digits of", "digit of"];

    /// <summary>Reads the whole text as an accuracy.</summary>
    /// <param name="text">A share of the reading in per cent, amperes, counts of so many amperes, or several of these with +
    /// between.</param>
    /// <param name="accuracy">What was read; nothing at all when the result is false.</param>
    /// <param name="problem">Null when read; otherwise why not, as the end of a sentence.</param>
    public static bool TryRead(string text, out MeterAccuracy accuracy, out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        accuracy = default;
        var (share, plus) = (0m, Amps.Zero);
        var rest = text.Trim().TrimStart('±').Trim();
        if (rest.Length == 0)
        {
            problem = "it is empty";
            return false;
        }

        foreach (var part in rest.Split('+', StringSplitOptions.TrimEntries))
        {
            if (part.EndsWith('%'))
            {
                if (!TryNumber(part[..^1], out var percent) || percent >= 100)
                {
                    problem = $"'{part}' is not a share of the reading such as 1 %";
                    return false;
                }

                share += percent / 100;
                continue;
            }

            if (!TryAmps(part, out var amps, out problem))
                return false;
            plus += amps;
        }

        if (share >= 1)
        {
            problem = "the shares come to 100 % or more";
            return false;
        }

        accuracy = new MeterAccuracy(share, plus);
        problem = null;
        return true;
    }

    private static bool TryAmps(string part, out Amps amps, out string? problem)
    {
        foreach (var word in CountWords)
        {
            var at = part.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            if (at < 0)
                continue;
            amps = default;
            if (!TryNumber(part[..at], out var counts) || counts > 10_000)
            {
                problem = $"'{part}' does not begin with a number of counts";
                return false;
            }

            if (!QuantityReader.TryRead<Ampere>(part.AsSpan(at + word.Length), out var step, out problem))
                return false;
            amps = counts * step;
            return true;
        }

        if (QuantityReader.TryRead(part, out amps, out problem))
            return true;
        if (part.EndsWith("counts", StringComparison.OrdinalIgnoreCase) || part.EndsWith("digits", StringComparison.OrdinalIgnoreCase))
            problem = "say what a count is, such as 3 counts of 0.1 mA";
        return false;
    }

    private static bool TryNumber(string text, out decimal number) =>
        decimal.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
}
