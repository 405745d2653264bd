using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets 5 to 10 % under its lowest printed voltage, an analog one down to half of it.</summary>
internal sealed class VoltageLow : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.VoltageLow;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                if (fits[place].Level is not (VoltageFit.Low or VoltageFit.Starved) || point.Highest is not { } highest)
                    continue;

                var volts = point.Volts ?? highest;
                var text = point.Volts is null ? $"{volts} at the most" : feed.VoltsText;
                var load = feed.Loads[place];
                var printed = load.Rating.Voltage;
                var least = printed.Value.Low;
                var isStarved = fits[place].Level == VoltageFit.Starved;
                report.Add(
                    this,
                    Phrases.Subjects(load, feed),
                    isStarved
                        ? $"{load.Id} gets {text} from {feed.OutletNames}; it is made for {printed}. An analog load runs on that, "
                            + "with less headroom in its sound."
                        : $"{load.Id} gets {text} from {feed.OutletNames}, a little under what it is made for: {printed}.",
                    isStarved
                        ? $"0.50 × {least} = {least * VoltageBand.Starved} ≤ {volts} < 0.90 × {least} = {least * (1 - VoltageBand.Allowed)}"
                        : $"0.90 × {least} = {least * (1 - VoltageBand.Allowed)} ≤ {volts} < 0.95 × {least} = "
                            + $"{least * (1 - VoltageBand.Fine)}",
                    isStarved
                        ? $"For its full headroom use an outlet of {least}."
                        : $"It may clip early or restart; use an outlet of {least}.");
            }
        }
    }
}
