using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Files.Parsing;

namespace Loadmark.Workshop.Library;

/// <summary>The library at one moment: all gear that is not removed. Immutable, and safe to ask from many threads at once.</summary>
public sealed class GearSnapshot : IGearLookup
{
    private readonly Dictionary<(GearKind, string), LibraryGear> _byTag;
    private readonly Lazy<TextIndex> _index;

    internal GearSnapshot(long stamp, IEnumerable<LibraryGear> gear)
    {
        Stamp = stamp;
        Gear = [.. gear.OrderBy(static one => one.Kind).ThenBy(static one => one.Tag, StringComparer.OrdinalIgnoreCase)];
        _byTag = Gear.ToDictionary(static one => (one.Kind, GearTag.KeyOf(one.Tag)));
        _index = new Lazy<TextIndex>(() => new TextIndex([.. Gear.Select(static one => new IndexedText(
            one.Tag, [one.Name, string.Join(' ', one.Stored.Content.Words.Items), one.Stored.Content.Label]))]));
    }

    /// <summary>A library with nothing in it.</summary>
    public static GearSnapshot Empty { get; } = new(0, []);

    /// <summary>The library's count of changes at that moment.</summary>
    public long Stamp { get; }

    /// <summary>All gear: loads, then supplies, then leads, each by tag.</summary>
    public ImmutableArray<LibraryGear> Gear { get; }

    /// <summary>The piece that has a tag, capitals aside; null when none has.</summary>
    /// <param name="kind">What sort of thing it is.</param>
    /// <param name="tag">The tag.</param>
    public LibraryGear? Find(GearKind kind, string tag) => _byTag.GetValueOrDefault((kind, GearTag.KeyOf(tag)));

    /// <summary>
    /// Finds gear by tag, name, words that it is filed under, and label, the best match first. Forgives typos, and signs and noughts in
    /// tags. An empty text finds everything, in the order of <see cref="Gear"/>.
    /// </summary>
    /// <param name="query">What somebody typed.</param>
    /// <param name="most">At most so many.</param>
    /// <param name="kind">Only gear of this kind; null for all.</param>
    public ImmutableArray<LibraryGear> Search(string query, int most, GearKind? kind = null)
    {
        ArgumentNullException.ThrowIfNull(query);
        return string.IsNullOrWhiteSpace(query)
            ? [.. Gear.Where(one => kind is null || one.Kind == kind).Take(most)]
            : [.. _index.Value.Find(query, most, kind is null ? null : place => Gear[place].Kind == kind).Select(place => Gear[place])];
    }

    /// <inheritdoc/>
    public Load? FindLoad(string tag) => Find(GearKind.Load, tag)?.Piece?.Load;

    /// <inheritdoc/>
    public Supply? FindSupply(string tag) => Find(GearKind.Supply, tag)?.Piece?.Supply;

    /// <inheritdoc/>
    public IReadOnlyList<string> Near(GearKind kind, string tag) => [.. Search(tag, 3, kind).Select(static one => one.Tag)];
}
