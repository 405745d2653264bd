using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets 5 to 10 % over its highest printed voltage.</summary>
internal sealed class VoltageHigh : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.VoltageHigh;

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
                if (!fits[place].IsHigh || point.Highest is not { } volts)
                    continue;

                // The no-load voltage counts where it is known; where it is a guess, the rule on unregulated supplies says so.
                var load = feed.Loads[place];
                var printed = load.Rating.Voltage;
                var most = printed.Value.High;
                var isUnloaded = point.Volts is not { } nominal || volts > nominal;
                report.Add(
                    this,
                    Phrases.Subjects(load, feed),
                    $"{load.Id} gets {volts} from {feed.OutletNames}{(isUnloaded ? " until it draws its current" : "")}, "
                    + $"a little over what it is made for: {printed}.",
                    $"1.05 × {most} = {most * (1 + VoltageBand.Fine)} < {volts} ≤ 1.10 × {most} = {most * (1 + VoltageBand.Allowed)}",
                    $"Most loads bear it; ask the maker of {load.Id}, or use an outlet of {most}.");
            }
        }
    }
}
