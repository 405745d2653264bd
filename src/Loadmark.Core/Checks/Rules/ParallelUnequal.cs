using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Outlets are joined in parallel although they differ in voltage, form or polarity.</summary>
internal sealed class ParallelUnequal : Rule
{
    /// <inheritdoc/>
    public override string Name => "parallel-unequal";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's voltage law: only source resistance limits the current between unequal sources in parallel";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Joined != Joint.Parallel)
                continue;

            var working = Difference(feed);
            if (working is not null)
            {
                report.Add(
                    this,
                    Words.Subjects(feed),
                    $"{feed.OutletNames} are joined in parallel but are not alike: one drives current into the other.",
                    working,
                    "Join only outlets of the same supply set to the same voltage, and only where its maker allows it.");
            }
            else if (feed.Outlets.Any(outlet => outlet.Volts is null))
            {
                report.CannotTell(this, Words.Subjects(feed), $"A voltage of {feed.OutletNames} is not printed, so whether they are equal cannot be told. Measure before joining them.");
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
            if (other.Rating.Form.Value != first.Rating.Form.Value)
                return $"{first.Name} and {other.Name}: d.c. joined to a.c.";
            if (other.Rating.Polarity.Value != first.Rating.Polarity.Value && first.Rating.Form.Value == SupplyForm.Direct)
                return $"{first.Name} {PolarityText.Of(first.Rating.Polarity.Value)} ≠ {other.Name} {PolarityText.Of(other.Rating.Polarity.Value)}";
        }

        return first.Rating.Form.Value == SupplyForm.Alternating ? "two a.c. outlets: their phase is not known" : null;
    }
}
