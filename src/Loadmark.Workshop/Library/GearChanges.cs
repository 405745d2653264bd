using System.Collections.Immutable;
using Loadmark.Files.Library;
using Loadmark.Storage.Gear;

namespace Loadmark.Workshop.Library;

/// <summary>Says what a change of a piece of gear changed.</summary>
public static class GearChanges
{
    /// <summary>What is said otherwise after a change than before; empty for the adding, the removing, and what cannot be read.</summary>
    /// <param name="change">The change.</param>
    /// <param name="tag">The piece's tag.</param>
    public static ImmutableArray<GearDifference> DifferencesOf(GearChange change, string tag)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (change is not { Before: { } before, After: { } after })
            return [];
        var differences = ImmutableArray.CreateBuilder<GearDifference>();
        if (before.Tag != after.Tag)
            differences.Add(new GearDifference("tag", before.Tag, after.Tag));
        if (GearText.Read(before.Kind, tag, before.Text).Piece is { } old && GearText.Read(after.Kind, tag, after.Text).Piece is { } now)
            differences.AddRange(GearText.Differences(old, now));
        if (before.Words != after.Words)
            differences.Add(new GearDifference("words", Show(before), Show(after)));
        return differences.DrainToImmutable();

        static string? Show(GearContent content) => content.Words.Count == 0 ? null : string.Join(", ", content.Words.Items);
    }
}
