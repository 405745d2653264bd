using Google.OrTools.Sat;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Tests.Oracle.Naive;

/// <summary>A load on a feed.</summary>
/// <param name="Load">The load.</param>
/// <param name="Rating">The load rated at the feed's voltage.</param>
/// <param name="Occupant">What it is there to others on its return.</param>
/// <param name="On">Whether it is there.</param>
internal sealed record NaiveChoice(WiredLoad Load, LoadRating Rating, Occupant Occupant, IntVar On)
{
    /// <summary>What it draws when it runs, in amps; zero when nothing tells.</summary>
    public decimal Run => Rating.Running?.Value.Value ?? 0;

    /// <summary>What it draws while it starts, in amps; zero when nothing tells.</summary>
    public decimal Start => Rating.Starting?.Value.Value ?? 0;

    /// <summary>Whether it is still starting when a surge of so many seconds has ended.</summary>
    public bool Outlasts(decimal seconds) => Start > Run && Rating.StartDuration is { } takes && takes.Value > seconds;
}
