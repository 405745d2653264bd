using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The centre of the plug has the wrong sign for the load.</summary>
internal sealed class ReversedPolarity : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.ReversedPolarity;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "IEC 60417-5926 (polarity of d.c. power connector)";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var loads = new List<WiredLoad>();
        var outlets = new List<string>();
        var concerned = new List<string>();
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            if (feed.Joined == Joint.Series && point.Form is not { IsKnown: true, Value: SupplyForm.Alternating })
                JudgeSeries(feed, report);

            for (var place = 0; place < feed.Loads.Length; place++)
            {
                var load = feed.Loads[place];
                if (fits[place].Polarity == Fit.No)
                    Add(feed, load, report);
                else if (fits[place].Polarity == Fit.NotKnown)
                    Collect(feed, load);
            }
        }

        TellLoads(loads, report);
        TellOutlets(outlets, concerned, report);

        void Collect(WiredFeed feed, WiredLoad load)
        {
            // A load of which nothing is known is asked about once, by the rule on voltages.
            if (!load.Rating.Polarity.IsKnown && !load.Rating.IsBlank)
                loads.Add(load);
            if (feed.Outlets.All(static outlet => outlet.Rating.Polarity.IsKnown))
                return;
            outlets.AddRange(
                feed.Outlets.Where(static outlet => !outlet.Rating.Polarity.IsKnown).Select(static outlet => outlet.Name)
                    .Except(outlets, StringComparer.Ordinal));
            concerned.Add(load.Id);
        }
    }

    private void Add(WiredFeed feed, WiredLoad load, Report report)
    {
        var wanted = load.Rating.Polarity;
        report.Add(
            this,
            Phrases.Subjects(load, feed),
            $"{load.Id} is {Text(wanted)}; {feed.OutletNames} is "
            + $"{Text(feed.Outlets[0].Rating.Polarity)}{(feed.Reverses ? $" and the lead {feed.Lead!.Id} reverses it" : "")}.",
            $"{PolarityText.Of(feed.PolarityAtPlug)} at the plug ≠ {PolarityText.Of(wanted.Value)}",
            feed.Reverses ? $"Use a lead that does not reverse, for {load.Id} alone." : $"Use a reversing lead, for {load.Id} alone.");
    }

    private void TellLoads(List<WiredLoad> unknown, Report report)
    {
        if (unknown.Count == 0)
            return;

        var loads = Phrases.Ids(unknown);
        var said = UnclearLabel.Quote(unknown, LabelTopics.Polarity);
        report.Add(
            this,
            Severity.Unsure,
            [.. loads],
            $"The polarity of {Phrases.List(loads)} is not "
            + $"known.{(said.Length > 0 ? said : " Centre negative is usual only for ordinary pedals of 9 V.")} Fed the wrong way round, "
            + $"{Phrases.Verb(loads.Count, "it", "they")} can be destroyed.",
            "polarity not known",
            $"Look for the drawing of the plug beside the jack{Phrases.Verb(loads.Count, "", "s")} and type it as 'polarity'; "
            + "where there is none, ask the maker.");
    }

    private void TellOutlets(List<string> outlets, List<string> concerned, Report report)
    {
        if (outlets.Count == 0)
            return;

        report.Add(
            this,
            Severity.Unsure,
            [.. outlets, .. concerned],
            $"The polarity of {Phrases.List(outlets)} is not known: the other way round it can destroy {Phrases.List(concerned)}.",
            "polarity not known",
            "Look for the drawing of the plug on the label, or measure: red probe inside the plug, black outside; "
            + "a reading with a minus sign is centre negative. Then type it as 'polarity'.");
    }

    private void JudgeSeries(WiredFeed feed, Report report)
    {
        var first = feed.Outlets[0];
        foreach (var other in feed.Outlets)
        {
            if (other.Rating.Polarity.Value == first.Rating.Polarity.Value || !first.Rating.Polarity.IsKnown
                || !other.Rating.Polarity.IsKnown)
                continue;

            report.Add(
                this,
                Phrases.Subjects(feed),
                $"{feed.OutletNames} are joined in series, but {first.Name} is {Text(first.Rating.Polarity)} and {other.Name} is "
                + $"{Text(other.Rating.Polarity)}: their voltages subtract instead of adding.",
                $"{first.Name} {PolarityText.Of(first.Rating.Polarity.Value)} ≠ {other.Name} "
                + $"{PolarityText.Of(other.Rating.Polarity.Value)}",
                "Join only outlets of the same polarity.");
            return;
        }
    }

    private static string Text(Figure<Polarity> polarity) =>
        PolarityText.Of(polarity.Value) + (polarity.IsAssumed ? " (assumed)" : "");
}
