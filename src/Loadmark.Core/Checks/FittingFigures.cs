using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks;

/// <summary>
/// Which figures the rules could compare at every plug of a rig, so that a verdict without a finding may say that they fit. A figure that
/// is not known, or that a convention stands for, was compared with nothing and is left out.
/// </summary>
internal static class FittingFigures
{
    /// <summary>The word for the voltage at every plug.</summary>
    public const string Volts = "volts";

    /// <summary>The word for what is asked of every outlet.</summary>
    public const string Current = "current";

    /// <summary>
    /// The words for them: <c>volts</c>, <c>a.c.</c>, <c>polarity</c>, <c>current</c>; empty while nothing is plugged in.
    /// </summary>
    /// <param name="subject">What the rules judge.</param>
    public static ValueList<string> Of(NameplateCase subject)
    {
        var feeds = subject.Rig.Feeds;
        if (feeds.Count == 0)
            return [];

        var words = new List<string>(4);
        if (feeds.Items.All(static feed => feed.Volts is not null && feed.Loads.All(static load => load.Rating.Voltage.IsKnown)))
            words.Add(Volts);
        if (feeds.Items.Any(IsAlternating)
            && feeds.Items.All(static feed => Stated(feed.Form) && feed.Loads.All(static load => Stated(load.Rating.Form))))
            words.Add("a.c.");
        if (!feeds.Items.All(IsAlternating) && feeds.Items.Where(static feed => !IsAlternating(feed)).All(PolarityIsStated))
            words.Add("polarity");
        if (subject.Budgets.Outlets.TrueForAll(static budget => budget is { IsWhole: true, Limit: not null }))
            words.Add(Current);
        return [.. words];
    }

    private static bool IsAlternating(WiredFeed feed) => feed.Form is { IsKnown: true, Value: SupplyForm.Alternating };

    private static bool PolarityIsStated(WiredFeed feed) =>
        feed.Outlets.All(static outlet => Stated(outlet.Rating.Polarity)) && feed.Loads.All(static load => Stated(load.Rating.Polarity));

    private static bool Stated<T>(Figure<T> figure)
        where T : struct => figure is { IsKnown: true, IsAssumed: false };
}
