using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The centre of the plug has the wrong sign for the load.</summary>
internal sealed class ReversedPolarity : Rule
{
    /// <inheritdoc/>
    public override string Name => "reversed-polarity";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "IEC 60417-5926 (polarity of d.c. power connector)";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Form.Value == SupplyForm.Alternating)
                continue;

            var outlet = feed.Outlets[0].Rating.Polarity;
            if (feed.Joined == Joint.Series)
                JudgeSeries(feed, report);

            foreach (var load in feed.Loads)
            {
                var wanted = load.Rating.Polarity;
                if (load.Rating.Form.Value == SupplyForm.Alternating || wanted.Value == feed.PolarityAtPlug)
                    continue;

                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{load.Id} is {Text(wanted)}; {feed.OutletNames} is {Text(outlet)}{(feed.Reverses ? $" and the lead {feed.Lead!.Id} reverses it" : "")}.",
                    $"{PolarityText.Of(feed.PolarityAtPlug)} at the plug ≠ {PolarityText.Of(wanted.Value)}",
                    feed.Reverses ? $"Use a lead that does not reverse, for {load.Id} alone." : $"Use a reversing lead, for {load.Id} alone.");
            }
        }
    }

    private void JudgeSeries(WiredFeed feed, Report report)
    {
        var first = feed.Outlets[0];
        foreach (var other in feed.Outlets)
        {
            if (other.Rating.Polarity.Value == first.Rating.Polarity.Value)
                continue;

            report.Add(
                this,
                Words.Subjects(feed),
                $"{feed.OutletNames} are joined in series, but {first.Name} is {Text(first.Rating.Polarity)} and {other.Name} is {Text(other.Rating.Polarity)}: their voltages subtract instead of adding.",
                $"{first.Name} {PolarityText.Of(first.Rating.Polarity.Value)} ≠ {other.Name} {PolarityText.Of(other.Rating.Polarity.Value)}",
                "Join only outlets of the same polarity.");
            return;
        }
    }

    private static string Text(Figure<Polarity> polarity) =>
        PolarityText.Of(polarity.Value) + (polarity.IsAssumed ? " (assumed)" : "");
}
