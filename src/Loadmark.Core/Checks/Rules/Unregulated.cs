using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>
/// A supply that is unregulated, or may be, can stand over its printed voltage while little is drawn, so far that a load could be harmed.
/// </summary>
internal sealed class Unregulated : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.Unregulated;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Unsure;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        HashSet<SupplyRating>? unknown = null;
        foreach (var judged in subject.Feeds)
        {
            if (judged.Point.Form is { IsKnown: true, Value: SupplyForm.Alternating })
                continue;

            var isTold = JudgeFeed(judged, report);
            foreach (var outlet in judged.Feed.Outlets)
            {
                if (outlet.Supply.Regulated is null && !isTold)
                    (unknown ??= []).Add(outlet.Supply);
            }
        }

        if (unknown is not null)
        {
            // In the order of the file, whatever the order of the wiring.
            var ids = subject.Rig.Supplies.Where(unknown.Contains).Select(supply => supply.Supply.Id).ToList();
            report.CannotTell(this, [.. ids], $"Whether {Phrases.List(ids)} {Phrases.Is(ids.Count)} regulated is not given.");
        }
    }

    private bool JudgeFeed(JudgedFeed judged, Report report)
    {
        var (feed, point) = (judged.Feed, judged.Point);
        if (point.MayStandAt is not { } open)
            return false;

        var loads = new List<WiredLoad>();
        for (var place = 0; place < feed.Loads.Length; place++)
        {
            var isHarmed = feed.Loads[place].Rating.Voltage is { IsKnown: true } printed
                && VoltageBand.Judge(open, printed.Value) == VoltageFit.TooHigh;
            if (isHarmed && judged.Fits[place].NotTooHigh != Fit.No)
                loads.Add(feed.Loads[place]);
        }

        if (loads.Count == 0)
            return false;

        var supply = feed.Outlets.First(static outlet =>
            outlet.Rating.NoLoad is null && outlet.Supply is ({ Regulated: false } or { MayBeUnregulated: true })).Supply;
        var ids = Phrases.Ids(loads);
        report.Add(
            this,
            [.. feed.Outlets.Select(static outlet => outlet.Name), .. ids],
            $"{supply.Supply.Id} {(supply.Regulated is false ? "is not regulated" : "looks like a plain transformer adaptor")}: "
            + $"{feed.OutletNames} {Phrases.Verb(feed.Outlets.Length, "", "together ")}may stand at {open} while little is drawn, "
            + $"and {Phrases.List(ids)} {Phrases.Is(ids.Count)} made for less.",
            Working(feed, open),
            "Measure it with nothing connected, and again with the loads running; type the first as 'no_load', "
            + "or 'regulated: true' where the two are alike.");
        return true;
    }

    private static string Working(WiredFeed feed, Volts open)
    {
        var outlet = feed.Outlets[0];
        if (feed.Outlets.Length > 1)
            return $"{feed.VoltsText} as printed, {open} with nothing drawn";
        return outlet.Rating.Outlet.SourceOhms is { } ohms && outlet.Limit is { } limit
            ? $"{outlet.Volts} + {limit.Value} × {ohms} = {open}"
            : $"{OpenVoltage.AssumedRatio} × {outlet.Volts} = {open} ({OpenVoltage.AssumedRatio} assumed, common practice, no source)";
    }
}
