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
            if (feed.Volts is not { } volts)
            {
                report.CannotTell(
                    this, Words.Subjects(feed), $"The voltage of {feed.OutletNames} is not printed. Measure it before plugging in.");
                continue;
            }

            var open = OpenVoltage.Of(feed);
            foreach (var load in feed.Loads)
            {
                var printed = load.Rating.Voltage;
                if (VoltageBand.Judge(volts, printed.Value) == VoltageFit.TooHigh)
                    Add(report, feed, load, volts, $"{load.Id} gets {feed.VoltsText} from {feed.OutletNames}", Remedy(feed, load));
                else if (open is { IsAssumed: false } unloaded && VoltageBand.Judge(unloaded.Value, printed.Value) == VoltageFit.TooHigh)
                    Add(report, feed, load, unloaded.Value, $"{load.Id} gets {unloaded.Value} from {feed.OutletNames} until it draws its current", Remedy(feed, load));
            }
        }
    }

    private void Add(Report report, WiredFeed feed, WiredLoad load, Volts volts, string message, string remedy)
    {
        var printed = load.Rating.Voltage;
        var most = printed.Value.High;
        report.Add(
            this,
            Words.Subjects(load, feed),
            $"{message}; it is made for {printed}.",
            $"{volts} > 1.10 × {most} = {most * (1 + VoltageBand.Allowed)}",
            remedy);
    }

    private static string Remedy(WiredFeed feed, WiredLoad load)
    {
        if (feed.Outlets is [var outlet])
        {
            foreach (var mode in outlet.Rating.Modes)
            {
                if (mode.Volts is { } range && VoltageBand.Judge(range.Low, load.Rating.Voltage.Value) is VoltageFit.Fine)
                    return $"Set {outlet.Name} to {range.Low} before plugging in.";
            }
        }

        return $"Feed {load.Id} from an outlet of {load.Rating.Voltage.Value}.";
    }
}
