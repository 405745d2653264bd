using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets 5 to 10 % under its lowest printed voltage.</summary>
internal sealed class VoltageLow : Rule
{
    /// <inheritdoc/>
    public override string Name => "voltage-low";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Volts is not { } volts)
                continue;

            foreach (var load in feed.Loads)
            {
                var printed = load.Rating.Voltage;
                if (VoltageBand.Judge(volts, printed.Value) != VoltageFit.Low)
                    continue;

                var least = printed.Value.Low;
                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{load.Id} gets {feed.VoltsText} from {feed.OutletNames}, a little under what it is made for: {printed}.",
                    $"0.90 × {least} = {least * (1 - VoltageBand.Allowed)} ≤ {volts} < 0.95 × {least} = {least * (1 - VoltageBand.Fine)}",
                    $"It may clip early or restart; use an outlet of {least}.");
            }
        }
    }
}
