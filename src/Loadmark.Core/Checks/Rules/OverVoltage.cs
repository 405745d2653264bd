using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets more than 10 % over its highest printed voltage.</summary>
internal sealed class OverVoltage : Rule
{
    /// <inheritdoc/>
    public override string Name => "over-voltage";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            var open = OpenVoltage.Of(feed);
            if (feed.Volts is null)
            {
                report.CannotTell(
                    this,
                    Words.Subjects(feed),
                    $"The voltage of {feed.OutletNames} is not known, so whether it suits {Words.List(Words.Ids(feed.Loads))} cannot be told. Measure it before plugging in.");
            }

            // One advice for all loads of a feed, found when the first of them needs it.
            (bool IsFound, string? Text) setting = default;
            foreach (var load in feed.Loads)
            {
                var printed = load.Rating.Voltage.Value;
                if (feed.Volts is { } volts && VoltageBand.Judge(volts, printed) == VoltageFit.TooHigh)
                    Add(report, feed, load, volts, (feed.VoltsText, ""), ref setting);
                else if (open is { IsAssumed: false } unloaded && VoltageBand.Judge(unloaded.Value, printed) == VoltageFit.TooHigh)
                    Add(report, feed, load, unloaded.Value, (unloaded.Value.ToString(), " until it draws its current"), ref setting);
            }
        }
    }

    private void Add(Report report, WiredFeed feed, WiredLoad load, Volts volts, (string Volts, string Until) text, ref (bool IsFound, string? Text) setting)
    {
        if (!setting.IsFound)
            setting = (true, VoltageAdvice.Setting(feed));
        var printed = load.Rating.Voltage;
        var most = printed.Value.High;
        report.Add(
            this,
            Words.Subjects(load, feed),
            $"{load.Id} gets {text.Volts} from {feed.OutletNames}{text.Until}; it is made for {printed}.",
            $"{volts} > 1.10 × {most} = {most * (1 + VoltageBand.Allowed)}",
            setting.Text ?? VoltageAdvice.Outlet(load));
    }
}
