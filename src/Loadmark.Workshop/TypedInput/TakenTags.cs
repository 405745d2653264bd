using Loadmark.Core.Gear;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.TypedInput;

/// <summary>What is to be taken though the library says otherwise.</summary>
/// <param name="Tags">The tags as typed.</param>
/// <param name="All">Whether all of it is.</param>
public sealed record TakenTags(IReadOnlyList<string> Tags, bool All)
{
    /// <summary>Whether a row is to be taken.</summary>
    /// <param name="row">The row.</param>
    public bool Has(ImportRow row) => All || Tags.Any(tag => GearTag.KeyOf(tag) == GearTag.KeyOf(row.Tag));

    /// <summary>The tags that nothing has; a slip that would else go unseen.</summary>
    /// <param name="preview">What there is to be taken.</param>
    public IEnumerable<string> Strangers(ImportPreview preview) =>
        Tags.Where(tag => preview.Rows.All(row => GearTag.KeyOf(tag) != GearTag.KeyOf(row.Tag)));
}
