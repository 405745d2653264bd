using System.Globalization;

namespace Loadmark.Simulation.Spreading;

/// <summary>Shares of samples, in words.</summary>
public static class ShareText
{
    /// <summary>A share to a tenth of a per cent, and never "100 %" or "0 %" of what is not quite that.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    public static string Of(double share)
    {
        var percent = Math.Round(100 * share, 1);
        return (percent, share) switch
        {
            ( >= 100, < 1) => "over 99.9 %",
            ( <= 0, > 0) => "under 0.1 %",
            _ => string.Create(CultureInfo.InvariantCulture, $"{percent:0.#} %"),
        };
    }
}
