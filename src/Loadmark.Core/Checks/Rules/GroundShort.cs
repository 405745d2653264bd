using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load with positive ground shares a return with one with negative ground.</summary>
internal sealed class GroundShort : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.GroundShort;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's voltage law: the audio leads join both grounds, so the supply is shorted through them";

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var judged in subject.Returns)
        {
            if (judged.Occupancy.Grounds != Fit.Yes)
                JudgeReturn(judged, report);
        }
    }

    private void JudgeReturn(JudgedReturn judged, Report report)
    {
        var group = judged.Group;
        var positive = judged.IdsWhere(static load => load is { IsOnWinding: false, Ground: GroundSide.Positive });
        var negative = judged.IdsWhere(static load => load is { IsOnWinding: false, Ground: GroundSide.Negative });
        var unknown = judged.IdsWhere(static load => load is { IsOnWinding: false, Ground: null });
        var names = Phrases.List(group.Names);
        if (judged.Occupancy.Grounds == Fit.No)
        {
            report.Add(
                this,
                Phrases.Subjects(group, [.. positive, .. negative]),
                $"{Phrases.List(positive)} {Phrases.Verb(positive.Count, "has", "have")} the ground on the positive side and "
                + $"{Phrases.Verb(positive.Count, "shares", "share")} the return of {names} with {Phrases.List(negative)}: "
                + "the audio leads short the supply.",
                "+ of the supply meets − through the screens of the audio leads",
                $"Feed {Phrases.List(positive)} from an isolated outlet or a supply of {Phrases.Verb(positive.Count, "its", "their")} own.",
                [.. positive]);
            return;
        }

        List<string> others = [.. positive, .. negative];
        var said = UnclearLabel.Quote(group.Loads.Where(load => unknown.Contains(load.Id)), LabelTopics.Ground);
        report.Add(
            this,
            Severity.Unsure,
            Phrases.Subjects(group, [.. unknown, .. others]),
            $"Which side is the ground of {Phrases.List(unknown)} is not known, "
            + $"and {Phrases.Verb(unknown.Count, "it shares", "they share")} the return of "
            + $"{names}{(others.Count > 0 ? $" with {Phrases.List(others)}" : "")}: old circuits that are centre positive often have "
            + $"positive ground, and then the audio leads short the supply.{said}",
            "ground not known on a shared return",
            "With nothing connected, measure between the sleeve of the audio jack and both contacts of the power jack of "
            + $"{Phrases.List(unknown)}: the one with no resistance is the ground. Then type it as 'ground', "
            + $"or give {Phrases.Verb(unknown.Count, "it", "each")} an isolated outlet.",
            [.. unknown]);
    }
}
