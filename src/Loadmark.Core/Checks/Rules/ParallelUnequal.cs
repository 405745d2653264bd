using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Outlets are joined in parallel although they differ in voltage, form or polarity.</summary>
internal sealed class ParallelUnequal : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.ParallelUnequal;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source =>
        "Kirchhoff's voltage law: only source resistance limits the current between unequal sources in parallel";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        foreach (var feed in rig.Feeds)
        {
            if (feed.Joined != Joint.Parallel)
                continue;

            var working = Difference(feed);
            if (working is not null)
            {
                report.Add(
                    this,
                    Phrases.Subjects(feed),
                    $"{feed.OutletNames} are joined in parallel but are not alike: one drives current into the other.",
                    working,
                    "Join only outlets of the same supply set to the same voltage, and only where its maker allows it.");
            }
            else if (feed.Outlets.Any(outlet => outlet.Volts is null))
            {
                report.Add(
                    this,
                    Severity.Unsure,
                    Phrases.Subjects(feed),
                    $"A voltage of {feed.OutletNames} is not known, so whether they are equal cannot be told: "
                    + "the higher one drives current into the other.",
                    "voltage not known",
                    "Measure each with a meter before joining them.");
            }
            else if (feed.Outlets.Any(static outlet => !outlet.SettingIsStated))
            {
                report.Add(
                    this,
                    Severity.Unsure,
                    Phrases.Subjects(feed),
                    $"{feed.OutletNames} can be set to several voltages, and the wiring does not say to which: set differently, "
                    + "one drives current into the other.",
                    "settings not given",
                    "Look at both switches before joining them, and write 'at'.");
            }
            else if (feed.Outlets.Any(static outlet => !outlet.Rating.Form.IsKnown || !outlet.Rating.Polarity.IsKnown))
            {
                report.Add(
                    this,
                    Severity.Unsure,
                    Phrases.Subjects(feed),
                    $"The kind of current or the polarity of {feed.OutletNames} is not known: joined the wrong way round, "
                    + "one shorts the other.",
                    "not known whether they are alike",
                    "Look at the labels, or measure each with a meter before joining them.");
            }
        }
    }

    private static string? Difference(WiredFeed feed)
    {
        var first = feed.Outlets[0];
        WiredOutlet? known = null;
        foreach (var other in feed.Outlets)
        {
            if (other.Volts is { } volts && volts != (known ??= other).Volts)
                return $"{known.Name} {known.Volts} ≠ {other.Name} {volts}";
            if (!other.Rating.Form.IsKnown || !first.Rating.Form.IsKnown)
                continue;
            if (other.Rating.Form.Value != first.Rating.Form.Value)
                return $"{first.Name} and {other.Name}: d.c. joined to a.c.";
            if (other.Rating.Polarity.IsKnown && first.Rating.Polarity.IsKnown && other.Rating.Polarity.Value != first.Rating.Polarity.Value
                && first.Rating.Form.Value == SupplyForm.Direct)
                return $"{first.Name} {PolarityText.Of(first.Rating.Polarity.Value)} ≠ {other.Name} "
                    + $"{PolarityText.Of(other.Rating.Polarity.Value)}";
        }

        return first.Rating.Form is { IsKnown: true, Value: SupplyForm.Alternating } ? "two a.c. outlets: their phase is not known" : null;
    }
}
