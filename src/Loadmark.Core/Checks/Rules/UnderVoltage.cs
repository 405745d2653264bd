using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets more than 10 % under its lowest printed voltage, an analog one under half of it.</summary>
internal sealed class UnderVoltage : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.UnderVoltage;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            (bool IsFound, string? Text) setting = default;
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                if (fits[place].Level != VoltageFit.TooLow || point.Highest is not { } highest)
                    continue;

                // Where nothing tells the voltage under load, what stands there with nothing drawn is the most that it can be.
                var volts = point.Volts ?? highest;
                if (!setting.IsFound)
                    setting = (true, VoltageAdvice.Setting(feed));
                var load = feed.Loads[place];
                var printed = load.Rating.Voltage;
                var least = printed.Value.Low;
                var isAnalog = VoltageBand.IsAnalog(load.Rating);
                var mayRun = load.Rating.IsDigital is null && volts >= least * VoltageBand.Starved;
                report.Add(
                    this,
                    Phrases.Subjects(load, feed),
                    $"{load.Id} gets {(point.Volts is null ? $"{volts} at the most" : feed.VoltsText)} from {feed.OutletNames}; "
                    + $"it is made for {printed}."
                    + (mayRun ? " An analog load would run on that, a digital one will not; which it is, is not given ('kind')." : ""),
                    isAnalog
                        ? $"{volts} < 0.50 × {least} = {least * VoltageBand.Starved}"
                        : $"{volts} < 0.90 × {least} = {least * (1 - VoltageBand.Allowed)}",
                    setting.Text ?? VoltageAdvice.Outlet(load));
            }
        }
    }
}
