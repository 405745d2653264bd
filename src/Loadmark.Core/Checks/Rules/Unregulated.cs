using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>An unregulated supply stands over its printed voltage while little is drawn.</summary>
internal sealed class Unregulated : Rule
{
    /// <inheritdoc/>
    public override string Name => "unregulated";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        List<string>? unknown = null;
        foreach (var supply in rig.Supplies)
        {
            if (supply.Regulated is true)
                continue;

            var feeds = rig.Feeds.Where(feed => feed.Form.Value == SupplyForm.Direct && feed.Outlets.Any(outlet => outlet.Rating.Supply == supply.Supply)).ToList();
            if (feeds.Count == 0)
                continue;

            if (supply.Regulated is null)
            {
                (unknown ??= []).Add(supply.Supply.Id);
                continue;
            }

            foreach (var feed in feeds)
            {
                if (OpenVoltage.Of(feed) is not { } open)
                    continue;

                report.Add(
                    this,
                    Words.Subjects(feed),
                    $"{supply.Supply.Id} is not regulated: {feed.OutletNames} may stand at {open} until its loads draw their current.",
                    Working(feed, open),
                    "Measure it with nothing connected, and again with the loads running.");
            }
        }

        if (unknown is not null)
            report.CannotTell(this, [.. unknown], $"Whether {Words.List(unknown)} {Words.Is(unknown.Count)} regulated is not given: taken as regulated.");
    }

    private static string Working(WiredFeed feed, Figure<Volts> open) => open.Origin switch
    {
        Origin.Measured => $"measured {open.Value} with nothing connected",
        Origin.Derived => $"{feed.VoltsText} + limit × source resistance = {open.Value}",
        _ => $"1.4 × {feed.Volts} = {open.Value} (1.4 assumed, common practice, no source)",
    };
}
