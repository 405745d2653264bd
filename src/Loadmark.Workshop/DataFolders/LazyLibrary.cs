using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;
using Loadmark.Storage;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.DataFolders;

/// <summary>The gear library in a folder, read when something is first taken from it. Nothing is made where there is none.</summary>
/// <param name="folder">The folder.</param>
public sealed class LazyLibrary(string folder) : IGearLookup
{
    private readonly Lazy<GearSnapshot> _gear = new(() => ReadAsync(folder).GetAwaiter().GetResult());

    /// <summary>Whether anything is kept in the folder.</summary>
    public bool IsThere => File.Exists(Path.Combine(folder, Store.FileName));

    /// <inheritdoc/>
    public Load? FindLoad(string tag) => _gear.Value.FindLoad(tag);

    /// <inheritdoc/>
    public Supply? FindSupply(string tag) => _gear.Value.FindSupply(tag);

    /// <inheritdoc/>
    public IReadOnlyList<string> Near(GearKind kind, string tag) => _gear.Value.Near(kind, tag);

    private static async Task<GearSnapshot> ReadAsync(string folder)
    {
        using var store = new Store(folder, TimeProvider.System);
        await store.OpenAsync();
        using var cache = new LibraryCache(store);
        return await cache.NowAsync();
    }
}
