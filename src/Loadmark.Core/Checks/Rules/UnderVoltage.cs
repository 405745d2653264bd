using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets more than 10 % under its lowest printed voltage.</summary>
internal sealed class UnderVoltage : Rule
{
    /// <inheritdoc/>
    public override string Name => "under-voltage";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Volts is not { } volts)
                continue;

            (bool IsFound, string? Text) setting = default;
            foreach (var load in feed.Loads)
            {
                var printed = load.Rating.Voltage;
                if (VoltageBand.Judge(volts, printed.Value) != VoltageFit.TooLow)
                    continue;

                if (!setting.IsFound)
                    setting = (true, VoltageAdvice.Setting(feed));
                var least = printed.Value.Low;
                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{load.Id} gets {feed.VoltsText} from {feed.OutletNames}; it is made for {printed}.",
                    $"{volts} < 0.90 × {least} = {least * (1 - VoltageBand.Allowed)}",
                    setting.Text ?? VoltageAdvice.Outlet(load));
            }
        }
    }
}
