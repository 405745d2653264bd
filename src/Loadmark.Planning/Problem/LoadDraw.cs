using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Problem;

/// <summary>What a load draws at one voltage.</summary>
/// <param name="Run">While it runs, in amps; zero when nothing tells.</param>
/// <param name="Start">While it starts, in amps; zero when nothing tells.</param>
internal readonly record struct LoadDraw(decimal Run, decimal Start)
{
    /// <summary>What a rating says.</summary>
    public static LoadDraw Of(LoadRating rating) => new(rating.Running?.Value.Value ?? 0, rating.Starting?.Value.Value ?? 0);

    /// <summary>
    /// What a load draws at the least when it is fed a voltage: its rating at that voltage or in general, whichever is less.
    /// </summary>
    public static LoadDraw Least(LoadRating load, Volts volts)
    {
        var general = Of(load);
        return load.DrawVaries ? general.Least(Of(LoadRating.Of(load.Load, volts))) : general;
    }

    /// <summary>The lesser of each of two.</summary>
    public LoadDraw Least(LoadDraw other) => new(Math.Min(Run, other.Run), Math.Min(Start, other.Start));
}
