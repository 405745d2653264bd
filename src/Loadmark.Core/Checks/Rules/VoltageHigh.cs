using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets 5 to 10 % over its highest printed voltage.</summary>
internal sealed class VoltageHigh : Rule
{
    /// <inheritdoc/>
    public override string Name => "voltage-high";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Volts is not { } nominal)
                continue;

            // The no-load voltage counts where it is known; where it is a guess, the rule on unregulated supplies says so.
            var open = OpenVoltage.Of(feed);
            var volts = open is { IsAssumed: false } unloaded ? Volts.Max(nominal, unloaded.Value) : nominal;
            foreach (var load in feed.Loads)
            {
                var printed = load.Rating.Voltage;
                if (VoltageBand.Judge(volts, printed.Value) != VoltageFit.High)
                    continue;

                var most = printed.Value.High;
                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{load.Id} gets {volts} from {feed.OutletNames}{(volts > nominal ? " until it draws its current" : "")}, a little over what it is made for: {printed}.",
                    $"1.05 × {most} = {most * (1 + VoltageBand.Fine)} < {volts} ≤ 1.10 × {most} = {most * (1 + VoltageBand.Allowed)}",
                    $"Most loads bear it; ask the maker of {load.Id}, or use an outlet of {most}.");
            }
        }
    }
}
