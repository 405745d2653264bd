using Loadmark.Core.Gear;
using Loadmark.Storage;
using Loadmark.Storage.Faults;

namespace Loadmark.Workshop.Library;

/// <summary>The tags that gear has anywhere in the store: in rigs, and in the library.</summary>
public static class TagsInStore
{
    /// <summary>The keys (<see cref="GearTag.KeyOf"/>) of the tags in use for a kind of gear.</summary>
    /// <param name="store">What is kept, opened.</param>
    /// <param name="library">The library.</param>
    /// <param name="kind">The kind.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public static async Task<IReadOnlySet<string>> OfAsync(
        Store store, LibraryCache library, GearKind kind, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(library);
        var tags = (await store.Gear.Uses.CountAsync(cancellationToken)).Keys.Where(use => use.Kind == kind).Select(
            static use => use.TagKey)
            .ToHashSet(StringComparer.Ordinal);
        tags.UnionWith((await library.NowAsync(cancellationToken)).Gear.Where(gear => gear.Kind == kind)
            .Select(static gear => GearTag.KeyOf(gear.Tag)));
        return tags;
    }
}
