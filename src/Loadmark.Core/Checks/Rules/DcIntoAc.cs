using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A direct outlet feeds a load made for alternating current.</summary>
internal sealed class DcIntoAc : Rule
{
    /// <inheritdoc/>
    public override string Name => "dc-into-ac";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "IEC 60417-5031 (direct current) and 5032 (alternating current); that the wrong one harms is common practice, no source";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            foreach (var load in feed.Loads)
            {
                if (feed.Form.Value != SupplyForm.Direct || load.Rating.Form.Value != SupplyForm.Alternating || load.Rating.TakesEitherForm)
                    continue;

                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{feed.OutletNames} gives direct current{(feed.Form.IsAssumed ? " (assumed, its label does not say)" : "")}; {load.Id} is made for alternating current.",
                    "d.c. ⎓ into a.c. ~",
                    $"Feed {load.Id} from an a.c. outlet of {load.Rating.Voltage.Value}.");
            }
        }
    }
}
