namespace Loadmark.Simulation.Spreading;

/// <summary>
/// Quantiles of samples: type 7 of R. J. Hyndman and Y. Fan, "Sample quantiles in statistical packages", The American
/// Statistician 50 (1996) 361: straight between the values at either side of place (n − 1)·p.
/// </summary>
internal static class Quantile
{
    /// <summary>A quantile of sorted values.</summary>
    /// <param name="sorted">The values, ascending, at least one; infinite at the end for what never happened.</param>
    /// <param name="share">Which one, 0 to 1: 0.5 is the median.</param>
    public static double Of(ReadOnlySpan<double> sorted, double share)
    {
        var place = (sorted.Length - 1) * share;
        var below = Math.Min((int)place, sorted.Length - 1);
        var rest = place - below;
        if (rest == 0 || below == sorted.Length - 1 || sorted[below] == sorted[below + 1])
            return sorted[below];
        return sorted[below] + (rest * (sorted[below + 1] - sorted[below]));
    }
}
