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
        HashSet<SupplyRating>? unknown = null;
        foreach (var feed in rig.Feeds)
        {
            if (feed.Form.Value == SupplyForm.Direct)
                Judge(feed, ref unknown, report);
        }

        if (unknown is not null)
        {
            // In the order of the file, whatever the order of the wiring.
            var ids = rig.Supplies.Where(unknown.Contains).Select(supply => supply.Supply.Id).ToList();
            report.CannotTell(this, [.. ids], $"Whether {Words.List(ids)} {Words.Is(ids.Count)} regulated is not given: taken as regulated.");
        }
    }

    private void Judge(WiredFeed feed, ref HashSet<SupplyRating>? unknown, Report report)
    {
        string? unregulated = null;
        foreach (var outlet in feed.Outlets)
        {
            if (outlet.Supply.Regulated is not { } isRegulated)
                (unknown ??= []).Add(outlet.Supply);
            else if (!isRegulated)
                unregulated ??= outlet.Supply.Supply.Id;
        }

        if (unregulated is null || OpenVoltage.Of(feed) is not { } open)
            return;

        report.Add(
            this,
            Words.Subjects(feed),
            $"{unregulated} is not regulated: {feed.OutletNames} {Words.Verb(feed.Outlets.Length, "", "together ")}may stand at {open} until {Words.Verb(feed.Loads.Length, "the load draws its", "the loads draw their")} current.",
            Working(feed, open),
            "Measure it with nothing connected, and again with the loads running.");
    }

    private static string Working(WiredFeed feed, Figure<Volts> open)
    {
        var outlet = feed.Outlets[0];
        if (open.Origin == Origin.Measured)
            return $"measured {open.Value} with nothing connected";
        if (feed.Outlets.Length > 1)
            return $"{feed.VoltsText} as printed, {open.Value} with nothing drawn";
        return open.Origin == Origin.Derived && outlet.Limit is { } limit
            ? $"{outlet.Volts} + {limit.Value} × {outlet.Rating.Outlet.SourceOhms} = {open.Value}"
            : $"{OpenVoltage.AssumedRatio} × {outlet.Volts} = {open.Value} ({OpenVoltage.AssumedRatio} assumed, common practice, no source)";
    }
}
