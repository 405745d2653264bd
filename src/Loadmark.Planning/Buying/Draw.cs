using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Buying;

/// <summary>What a load draws at the least, in amps; zero where nothing tells.</summary>
/// <param name="Run">Running.</param>
/// <param name="Start">While it starts; not less than running.</param>
internal readonly record struct Draw(decimal Run, decimal Start)
{
    /// <summary>What it draws at the least when it is fed a voltage: its rating at that voltage or in general, whichever is less.</summary>
    public static Draw Least(LoadRating load, Volts volts)
    {
        var general = Of(load);
        if (!load.DrawVaries)
            return general;
        var there = Of(LoadRating.Of(load.Load, volts));
        return new Draw(Math.Min(general.Run, there.Run), Math.Min(general.Start, there.Start));
    }

    private static Draw Of(LoadRating rating) => new(rating.Running?.Value.Value ?? 0, rating.Starting?.Value.Value ?? 0);
}
