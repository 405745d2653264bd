using Loadmark.Answers;
using Loadmark.Files.Errors;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Requests;

/// <summary>The refusal of a text that cannot be read, with every fault as the commands tell it.</summary>
internal static class UnreadableProblem
{
    /// <summary>Makes the problem of a rig, a price list or both.</summary>
    /// <param name="rig">What is wrong with the rig; empty where nothing is.</param>
    /// <param name="prices">What is wrong with the price list; empty where nothing is, or there is none.</param>
    public static Problem Of(IReadOnlyList<FileError> rig, IReadOnlyList<FileError> prices)
    {
        var first = rig.Concat(prices).First();
        return new Problem(ProblemKind.Unreadable, $"Line {first.Line}, column {first.Column}: {first.Message}")
        {
            More = new ProblemExtras { Errors = rig, PriceErrors = prices.Count > 0 ? prices : null }.Write,
        };
    }

    /// <summary>Makes the problem of readings.</summary>
    /// <param name="readings">What is wrong with them; at least one.</param>
    public static Problem OfReadings(IReadOnlyList<FileError> readings) =>
        new(ProblemKind.Unreadable, $"Readings, line {readings[0].Line}, column {readings[0].Column}: {readings[0].Message}")
        {
            More = new ProblemExtras { ReadingErrors = readings }.Write,
        };
}
