using Loadmark.Core.Ratings;
using Loadmark.Core.Texts;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Loads are joined twice: by the screens of the signal path and by a shared return.</summary>
internal sealed class GroundLoop : Rule
{
    /// <inheritdoc/>
    public override string Name => "ground-loop";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Noise;

    /// <inheritdoc/>
    public override string Source => "Faraday's law: a closed loop of conductors picks up what crosses it; that it is heard is common practice, no source";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        TellMistypedTags(rig, report);
        HashSet<string>? signal = null;
        foreach (var group in rig.Returns)
        {
            if (group.Loads.Count < 2)
                continue;

            signal ??= new HashSet<string>(rig.Rig.Signal, StringComparer.Ordinal);
            if (signal.Count == 0)
            {
                var all = Words.Ids(group.Loads);
                report.CannotTell(this, Words.Subjects(group, all), $"The order of the signal path is not given ('signal'); {Words.List(all)} share the return of {Words.List(group.Names)}.");
                continue;
            }

            var inPath = Words.Ids(group.Loads.Where(load => signal.Contains(load.Id)));
            if (inPath.Count < 2)
                continue;

            report.Add(
                this,
                Words.Subjects(group, inPath),
                $"{Words.List(inPath)} are joined twice, by the signal leads and by the return of {Words.List(group.Names)}: a loop that may hum near transformers and lamps.",
                $"{inPath.Count} loads of the signal path on one return",
                "Keep signal and d.c. leads short and side by side, or use isolated outlets.");
        }
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
                report.CannotTell(this, [tag], $"'{word}' in the signal path is no load of this rig; is {tag} meant?");
        }
    }
}
