using System.Text;
using Loadmark.Core.Texts;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Two tags look alike and are two, or a tag holds what is not seen.</summary>
internal sealed class NamesAlike : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.NamesAlike;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => "Unicode Technical Standard #39, section 4 (characters that look alike)";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var load in subject.Rig.Rig.Loads)
            Look(load.Id, seen, told, report);
        foreach (var supply in subject.Rig.Rig.Supplies)
            Look(supply.Id, seen, told, report);
    }

    private void Look(string id, Dictionary<string, string> seen, HashSet<string> told, Report report)
    {
        // A supply that is fed by another is a load too, by the same tag.
        if (!told.Add(id))
            return;
        var skeleton = LookAlikeText.SkeletonOf(id);
        if (!seen.TryAdd(skeleton, id))
        {
            var other = seen[skeleton];
            report.Add(
                this,
                [other, id],
                $"{other} and {id} look alike and are two: on a sheet or a label one can be taken for the other.",
                Difference(other, id),
                "Give one of them a tag that looks different.");
        }
        else if (LookAlikeText.FirstOdd(id) is { } odd)
        {
            report.Add(
                this,
                Severity.Note,
                [id],
                $"The tag {id} holds {What(odd.IsUnseen)}: whoever types what they see types another tag.",
                odd.IsUnseen ? LookAlikeText.NumberOf(odd.Character) : $"{odd.Character} = {LookAlikeText.NumberOf(odd.Character)}",
                "Type the tag anew.");
        }
    }

    private static string What(bool isUnseen) =>
        isUnseen ? "a character that is not seen" : "a letter of another alphabet that looks like one of ours";

    /// <summary>The first characters in which two texts differ, with their numbers.</summary>
    private static string Difference(string one, string other)
    {
        using var left = one.EnumerateRunes().GetEnumerator();
        using var right = other.EnumerateRunes().GetEnumerator();
        while (true)
        {
            var (hasLeft, hasRight) = (left.MoveNext(), right.MoveNext());
            if (!hasLeft || !hasRight)
                return $"{one.Length} ≠ {other.Length} characters";
            if (left.Current != right.Current)
                return $"{Named(left.Current)} ≠ {Named(right.Current)}";
        }
    }

    private static string Named(Rune character) => $"{character} ({LookAlikeText.NumberOf(character)})";
}
