using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A direct outlet feeds a load made for alternating current.</summary>
internal sealed class DcIntoAc : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.DcIntoAc;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source =>
        "IEC 60417-5031 (direct current) and 5032 (alternating current); Faraday's law: a transformer passes no direct current; "
        + "what else is inside is not known from outside";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var loads = new List<WiredLoad>();
        foreach (var (feed, point, fits) in subject.Feeds)
        {
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                var load = feed.Loads[place];
                if (fits[place].Form == Fit.No && point.Form.Value == SupplyForm.Direct)
                {
                    report.Add(
                        this,
                        Phrases.Subjects(load, feed),
                        $"{feed.OutletNames} gives direct current{(point.Form.IsAssumed ? " (assumed, its label does not say)" : "")}; "
                        + $"{load.Id} is made for alternating current. It depends on what is inside: with a transformer there, "
                        + "direct current overheats it; with rectifiers, some of its voltages are missing and it may not run.",
                        "d.c. ⎓ into a.c. ~",
                        $"Feed {load.Id} from an a.c. outlet of {load.Rating.Voltage.Value}.");
                }
                else if (fits[place].Form == Fit.NotKnown && point.Form is { IsKnown: true, Value: SupplyForm.Direct }
                    && !load.Rating.IsBlank)
                {
                    loads.Add(load);
                }
            }
        }

        if (loads.Count > 0)
        {
            var unknown = Phrases.Ids(loads);
            var said = UnclearLabel.Quote(loads, LabelTopics.Form);
            report.Add(
                this,
                Severity.Unsure,
                [.. unknown],
                $"Whether {Phrases.List(unknown)} {Phrases.Is(unknown.Count)} made for direct or alternating current is not "
                + $"known.{(said.Length > 0 ? said : " Direct current is usual only for ordinary pedals of 9 V.")}",
                "neither ⎓ nor ~ is printed",
                $"Look for ⎓ or d.c., ~ or a.c. beside the jack{Phrases.Verb(unknown.Count, "", "s")}; where there is neither, "
                + "ask the maker.");
        }
    }
}
