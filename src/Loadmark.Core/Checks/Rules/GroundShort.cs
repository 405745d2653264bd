using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>A load with positive ground shares a return with one with negative ground.</summary>
internal sealed class GroundShort : Rule
{
    /// <inheritdoc/>
    public override string Name => "ground-short";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's voltage law: the audio leads join both grounds, so the supply is shorted through them";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        List<string>? unstated = null;
        foreach (var group in rig.Returns)
        {
            if (group.Loads.Count < 2)
                continue;

            var positive = new List<string>();
            var negative = new List<string>();
            foreach (var load in group.Loads)
            {
                (load.Rating.Ground == GroundSide.Positive ? positive : negative).Add(load.Id);
                if (load.Rating.Load.Ground is null)
                    (unstated ??= []).Add(load.Id);
            }

            if (positive.Count == 0 || negative.Count == 0)
                continue;

            var names = Words.List(group.Names);
            report.Add(
                this,
                Words.Subjects(group, [.. positive, .. negative]),
                $"{Words.List(positive)} {Words.Verb(positive.Count, "has", "have")} the ground on the positive side and {Words.Verb(positive.Count, "shares", "share")} the return of {names} with {Words.List(negative)}: the audio leads short the supply.",
                "+ of the supply meets − through the screens of the audio leads",
                $"Feed {Words.List(positive)} from an isolated outlet or a supply of {Words.Verb(positive.Count, "its", "their")} own.");
        }

        if (unstated is not null)
            report.CannotTell(this, [.. unstated], $"Which side is the ground of {Words.List(unstated)} is not given ('ground'): taken as negative, as it nearly always is.");
    }
}
