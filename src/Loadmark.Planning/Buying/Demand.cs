using Loadmark.Core.Ratings;

namespace Loadmark.Planning.Buying;

/// <summary>Loads to be fed that are alike in what they need.</summary>
/// <param name="Rating">What each needs.</param>
/// <param name="Loads">Their tags, in the order of the rig.</param>
internal sealed record Demand(LoadRating Rating, IReadOnlyList<string> Loads)
{
    /// <summary>How many there are.</summary>
    public int Count => Loads.Count;

    /// <summary>The loads of a rig that no pinned feed feeds.</summary>
    public static List<Demand> Of(WiredRig pinned) =>
    [
        .. pinned.Loads.Items.Where(static load => load.Feeds.Count == 0).Select(static load => load.Rating)
            .GroupBy(static rating => (
                (rating.Form.Value, rating.TakesEitherForm, rating.Voltage.Value, rating.Running?.Value, rating.Starting?.Value),
                (rating.Polarity.Value, rating.Plug.Value, rating.DrawVaries ? rating.Id : "")))
            .Select(static alike => new Demand(alike.First(), [.. alike.Select(static rating => rating.Id)])),
    ];
}
