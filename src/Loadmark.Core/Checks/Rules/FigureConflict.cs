using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Texts;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Two figures for the same thing do not agree.</summary>
internal sealed class FigureConflict : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.FigureConflict;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Note;

    /// <inheritdoc/>
    public override string Source => "P = V·I; a figure typed beside a label counts before the label";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var rig = subject.Rig;
        foreach (var load in rig.Loads)
            Add(load.Id, load.Rating.Disagreements, report);
        foreach (var outlet in rig.Outlets)
            Add(outlet.Name, outlet.Rating.Disagreements, report);
        foreach (var supply in rig.Supplies)
        {
            Add(supply.Supply.Id, supply.Disagreements, report);
            foreach (var conflict in supply.Supply.Label?.Conflicts ?? [])
                report.Add(
                    this, [supply.Supply.Id], $"The label of {supply.Supply.Id} contradicts itself.", conflict, "Read the label again.");
        }

        TellMistypedTags(rig, report);
    }

    /// <summary>A word of the signal path that is no load may be an amplifier, or a load's tag with a slip in it.</summary>
    private void TellMistypedTags(WiredRig rig, Report report)
    {
        HashSet<string>? tags = null;
        List<string>? missing = null;
        foreach (var word in rig.Rig.Signal)
        {
            tags ??= new HashSet<string>(rig.Rig.Loads.Select(static load => load.Id), StringComparer.Ordinal);
            if (tags.Contains(word) || !word.Any(char.IsDigit))
                continue;

            missing ??= [.. tags.Except(rig.Rig.Signal, StringComparer.Ordinal)];
            if (NearestWord.Find(word, missing) is { } tag)
                report.Add(
                    this,
                    [tag],
                    $"'{word}' in the signal path is no load of this rig; is {tag} meant?",
                    $"{word} ≠ {tag}",
                    $"Write {tag} under 'signal' if it is.");
        }
    }

    private void Add(string subject, ImmutableArray<Disagreement> disagreements, Report report)
    {
        foreach (var one in disagreements)
            report.Add(
                this,
                [subject],
                $"Two figures for the {one.What} of {subject} do not agree. {one.Outcome}",
                one.Working,
                "Read the label again, or measure.");
    }
}
