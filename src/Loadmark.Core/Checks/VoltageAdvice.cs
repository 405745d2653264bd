using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>What to do about a load that gets the wrong voltage.</summary>
internal static class VoltageAdvice
{
    /// <summary>Another setting of the same outlet where one suits every load on it; null where none does.</summary>
    public static string? Setting(WiredFeed feed)
    {
        if (feed.Outlets is not [var outlet])
            return null;

        foreach (var mode in outlet.Rating.Modes)
        {
            if (mode.Volts is { } range && VoltageChoice.Of(range, feed.Loads) is { IsFine: true } choice && choice.Volts != outlet.Volts)
                return $"Set {outlet.Name} to {choice.Volts} before plugging in.";
        }

        return null;
    }

    /// <summary>An outlet of the printed voltage.</summary>
    public static string Outlet(WiredLoad load) => $"Feed {load.Id} from an outlet of {load.Rating.Voltage.Value}.";
}
