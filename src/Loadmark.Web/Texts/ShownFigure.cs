using Loadmark.Core.Gear;

namespace Loadmark.Web.Texts;

/// <summary>One figure of a thing as it is shown, with where it came from.</summary>
/// <param name="What">The figure: "9 V". Not shown where nothing tells it: what goes with it then merely lets a computation go on.</param>
/// <param name="Origin">Where it came from; null where nothing tells it.</param>
/// <param name="Unknown">What is shown where nothing tells it: "polarity not known"; null where something always does.</param>
/// <param name="Title">What the figure is, in a few words; null where it says so itself.</param>
public sealed record ShownFigure(string What, Origin? Origin, string? Unknown = null, string? Title = null)
{
    /// <summary>Whether anything tells it.</summary>
    public bool IsKnown => Origin is not (null or Core.Gear.Origin.Unknown);
}
