namespace Loadmark.Drawing.Diagrams;

/// <summary>What a mark gauge shows, as shares of its limit.</summary>
/// <param name="Run">The running draw; null when it or the limit is not known.</param>
/// <param name="Start">The starting draw; null when it or the limit is not known.</param>
/// <param name="Headroom">The share that is to stay free, 0 to below 1.</param>
/// <param name="HasLimit">Whether there is a limit to mark.</param>
/// <param name="StartsOver">Whether the starting draw is past what the outlet bears.</param>
/// <param name="IsReading">Whether <paramref name="Run"/> was read or computed.</param>
internal readonly record struct Gauge(
    decimal? Run, decimal? Start, decimal Headroom, bool HasLimit, bool StartsOver = false, bool IsReading = false)
{
    /// <summary>A gauge of amounts in one unit.</summary>
    public static Gauge Of(decimal? limit, decimal? run, decimal? start, decimal headroom, bool startsOver = false, bool isReading = false)
    {
        var has = limit is > 0;
        return new Gauge(
            has ? Share(run, limit!.Value) : null,
            has ? Share(start, limit!.Value) : null,
            Math.Clamp(headroom, 0m, 0.99m),
            has,
            startsOver,
            isReading);
    }

    /// <summary>The share, held to a hundred limits so that no division leaves what a decimal can hold.</summary>
    private static decimal? Share(decimal? amount, decimal limit)
    {
        if (amount is not { } known)
            return null;
        if (known <= 0)
            return 0;
        return limit < 1 && known > decimal.MaxValue * limit ? 100 : known / limit;
    }
}
