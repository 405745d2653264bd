namespace Loadmark.Core.Readings;

/// <summary>
/// Reads the accuracy of a current as it is typed, with nothing left to be known: <c>1 % + 2 mA</c>, <c>1.5 % + 3 counts of 0.1 mA</c>,
/// <c>2 mA</c>, <c>1 %</c>.
/// </summary>
public static class MeterAccuracyReader
{
    /// <summary>Reads the whole text as an accuracy.</summary>
    /// <param name="text">A share of the reading in per cent, amperes, counts of so many amperes, or several of these with +
    /// between.</param>
    /// <param name="accuracy">What was read; nothing at all when the result is false.</param>
    /// <param name="problem">Null when read; otherwise why not, as the end of a sentence.</param>
    public static bool TryRead(string text, out MeterAccuracy accuracy, out string? problem)
    {
        var isRead = PrintedAccuracyReader.TryRead<Ampere>(text, out var printed, out var fault);
        problem = !isRead ? fault!.Problem
            : printed.Digits != 0 ? "say what a count is, such as 3 counts of 0.1 mA"
            : printed.OfRange != 0 ? "say what the share of the range comes to, such as 2 mA"
            : null;
        accuracy = problem is null ? new MeterAccuracy(printed.OfReading, printed.Plus) : default;
        return problem is null;
    }
}
