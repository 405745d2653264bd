using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>An alternating outlet feeds a load made for direct current.</summary>
internal sealed class AcIntoDc : Rule
{
    /// <inheritdoc/>
    public override string Name => "ac-into-dc";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "IEC 60417-5031 (direct current) and 5032 (alternating current); that the wrong one harms is common practice, no source";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            if (feed.Form.Value != SupplyForm.Alternating)
                continue;

            foreach (var load in feed.Loads)
            {
                if (load.Rating.Form.Value != SupplyForm.Direct || load.Rating.TakesEitherForm)
                    continue;

                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{feed.OutletNames} gives alternating current; {load.Id} is made for direct current{(load.Rating.Form.IsAssumed ? " (assumed, its label does not say)" : "")}.",
                    "a.c. ~ into d.c. ⎓",
                    $"Feed {load.Id} from a d.c. outlet of {load.Rating.Voltage.Value}.");
            }
        }

        TellUnprinted(rig, report);
    }

    private void TellUnprinted(WiredRig rig, Report report)
    {
        List<string>? unprinted = null;
        foreach (var load in rig.Loads)
        {
            if (load.Feeds.Count > 0 && load.Rating.Form.IsAssumed && !load.Rating.TakesEitherForm)
                (unprinted ??= []).Add(load.Id);
        }

        foreach (var outlet in rig.Outlets)
        {
            if (outlet.Feeds.Count > 0 && outlet.Rating.Form.IsAssumed)
                (unprinted ??= []).Add(outlet.Name);
        }

        if (unprinted is not null)
            report.CannotTell(this, [.. unprinted], $"Whether {Words.List(unprinted)} {Words.Is(unprinted.Count)} d.c. or a.c. is not clear from the {Words.Verb(unprinted.Count, "label", "labels")}: taken as d.c.");
    }
}
