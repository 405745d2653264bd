using Loadmark.Core.Display;
using Loadmark.Core.Fits;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load gets more than 10 % over its highest printed voltage.</summary>
internal sealed class OverVoltage : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.OverVoltage;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => CommonPractice;

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var feed in subject.Feeds)
            JudgeFeed(feed, report);

        TellUnknownLoads(subject, report);
        TellUnknownOutlets(subject, report);
        TellSettings(subject, report);
    }

    private void JudgeFeed(JudgedFeed judged, Report report)
    {
        // One advice for all loads of a feed, found when the first of them needs it.
        (bool IsFound, string? Text) setting = default;
        var (feed, point) = (judged.Feed, judged.Point);
        for (var place = 0; place < feed.Loads.Length; place++)
        {
            if (judged.Fits[place].NotTooHigh != Fit.No)
                continue;

            var load = feed.Loads[place];
            var printed = load.Rating.Voltage;
            var isNominal = point.Volts is { } nominal && VoltageBand.Judge(nominal, printed.Value) == VoltageFit.TooHigh;
            var volts = isNominal ? point.Volts!.Value : point.Highest!.Value;
            if (!setting.IsFound)
                setting = (true, VoltageAdvice.Setting(feed));
            var most = printed.Value.High;
            report.Add(
                this,
                Phrases.Subjects(load, feed),
                $"{load.Id} gets {(isNominal ? feed.VoltsText : volts.ToString())} from "
                + $"{feed.OutletNames}{(isNominal ? "" : " until it draws its current")}; it is made for {printed}.",
                $"{volts} > 1.10 × {most} = {most * (1 + VoltageBand.Allowed)}",
                setting.Text ?? VoltageAdvice.Outlet(load));
        }
    }

    private void TellUnknownLoads(NameplateCase subject, Report report)
    {
        List<string>? unknown = null;
        foreach (var load in subject.Rig.Loads)
        {
            if (load.Feeds.Count > 0 && !load.Rating.Voltage.IsKnown)
                (unknown ??= []).Add(load.Id);
        }

        if (unknown is not null)
        {
            report.Add(
                this,
                Severity.Unsure,
                [.. unknown],
                $"The voltage of {Phrases.List(unknown)} is not known: a load fed more than it is made for can be destroyed.",
                "voltage not known",
                $"Read the {Phrases.Verb(unknown.Count, "label", "labels")} before plugging in: volts, d.c. or a.c., polarity. "
                + "Where nothing is printed, ask the maker; trying is no test.");
        }
    }

    private void TellUnknownOutlets(NameplateCase subject, Report report)
    {
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            if (point.Volts is not null || fits.Any(static fit => fit.NotTooHigh == Fit.No))
                continue;

            report.Add(
                this,
                Severity.Unsure,
                Phrases.Subjects(feed),
                $"The voltage of {feed.OutletNames} is not known, so whether it suits {Phrases.List(Phrases.Ids(feed.Loads))} cannot "
                + "be told.",
                point.Unloaded is { } open ? $"{open} with nothing connected; its voltage under load not known" : "voltage not known",
                "Read its label, and measure it with a meter before plugging in: first on the a.c. range, then on d.c.");
        }
    }

    /// <summary>
    /// The lowest setting of an outlet that would harm what is on it, where the wiring does not say how it is set; null where none would,
    /// or the setting is given. Outlets in series are judged with the others as they are taken to be set.
    /// </summary>
    internal static Volts? HarmfulSetting(WiredOutlet outlet)
    {
        if (outlet.SettingIsStated)
            return null;

        Volts? harmful = null;
        foreach (var volts in outlet.Rating.Settings)
        {
            var harms = outlet.Feeds.Any(feed => At(feed, outlet, volts) is { } sum
                && feed.Loads.Any(
                    load => load.Rating.Voltage is { IsKnown: true } printed
                        && VoltageBand.Judge(sum, printed.Value) == VoltageFit.TooHigh));
            if (harms && (harmful is not { } least || volts < least))
                harmful = volts;
        }

        return harmful;
    }

    /// <summary>What a feed would come to with one of its outlets set to a voltage; null where another's is not known.</summary>
    private static Volts? At(WiredFeed feed, WiredOutlet outlet, Volts volts)
    {
        if (feed.Joined != Joint.Series)
            return volts;

        Volts? sum = Quantity<Volt>.Zero;
        foreach (var leg in feed.Outlets)
            sum += leg == outlet ? volts : leg.Volts;
        return sum;
    }

    private void TellSettings(NameplateCase subject, Report report)
    {
        foreach (var outlet in subject.Rig.Outlets)
        {
            if (outlet.Feeds.Count == 0 || outlet.Volts is not { } taken || HarmfulSetting(outlet) is not { } tooHigh)
                continue;

            var settings = string.Join(", ", outlet.Rating.Modes.Select(static mode => FigureDisplay.Printed(mode.Volts)));
            report.Add(
                this,
                Severity.Unsure,
                [outlet.Name, .. outlet.Feeds.SelectMany(static feed => Phrases.Ids(feed.Loads))],
                $"{outlet.Name} can be set to {settings}, and the wiring does not say which: at {tooHigh} it can destroy what is on it.",
                $"settings {settings}",
                $"Look at the switch before plugging in, set it to {taken}, and write 'at: {taken}'.");
        }
    }
}
