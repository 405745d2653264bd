using Loadmark.Core.Fits;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Checks.Rules;

/// <summary>An alternating outlet feeds a load made for direct current.</summary>
internal sealed class AcIntoDc : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.AcIntoDc;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source =>
        "IEC 60417-5031 (direct current) and 5032 (alternating current); that the wrong one harms is common practice, no source";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var outlets = new List<string>();
        var concerned = new List<string>();
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                var load = feed.Loads[place];
                if (fits[place].Form == Fit.No && point.Form.Value == SupplyForm.Alternating)
                {
                    report.Add(
                        this,
                        Phrases.Subjects(load, feed),
                        $"{feed.OutletNames} gives alternating current; "
                        + $"{load.Id} is made for direct "
                        + $"current{(load.Rating.Form.IsAssumed ? " (assumed, its label does not say)" : "")}.",
                        "a.c. ~ into d.c. ⎓",
                        $"Feed {load.Id} from a d.c. outlet of {load.Rating.Voltage.Value}.");
                }
                else if (fits[place].Form == Fit.NotKnown && !point.Form.IsKnown)
                {
                    outlets.AddRange(
                        feed.Outlets.Where(static outlet => !outlet.Rating.Form.IsKnown).Select(static outlet => outlet.Name)
                            .Except(outlets, StringComparer.Ordinal));
                    concerned.Add(load.Id);
                }
                else if (fits[place].Form == Fit.NotKnown && point.Form.Value == SupplyForm.Alternating && !load.Rating.IsBlank)
                {
                    report.Add(
                        this,
                        Severity.Unsure,
                        Phrases.Subjects(load, feed),
                        $"{feed.OutletNames} gives alternating current, and whether {load.Id} is made for that is not known.",
                        "a.c. ~ into ?",
                        $"Look for ~ or a.c. beside the jack of {load.Id}; where there is neither, ask the maker.");
                }
            }
        }

        if (outlets.Count > 0)
        {
            report.Add(
                this,
                Severity.Unsure,
                [.. outlets, .. concerned],
                $"Whether {Phrases.List(outlets)} {Phrases.Verb(outlets.Count, "gives", "give")} direct or alternating current is not "
                + $"known: the wrong one can destroy {Phrases.List(concerned)}.",
                "neither ⎓ nor ~ is printed",
                "Look for ⎓ or d.c., ~ or a.c. on the label, or measure with a meter on both ranges: "
                + "an a.c. outlet shows next to nothing on the d.c. range.");
        }
    }
}
