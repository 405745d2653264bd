using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;
using Loadmark.Storage;
using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.DataFolders;

/// <summary>The gear library in a folder, read when something is first taken from it. Nothing is made where there is none.</summary>
/// <param name="folder">Tells the folder.</param>
public sealed class LazyLibrary(Func<string> folder) : IGearLookup
{
    private readonly Lazy<GearSnapshot> _gear = new(() => ReadAsync(folder()).GetAwaiter().GetResult());

    /// <summary>
    /// Whether anything is kept in the folder. True also where that cannot be told: whoever takes something is told why then.
    /// </summary>
    public bool IsThere
    {
        get
        {
            try
            {
                var path = folder();
                return StoreFolder.TroubleWith(path) is not null || File.Exists(Path.Combine(path, Store.FileName));
            }
            catch (StorageException)
            {
                return true;
            }
        }
    }

    /// <inheritdoc/>
    public Load? FindLoad(string tag) => _gear.Value.FindLoad(tag);

    /// <inheritdoc/>
    public Supply? FindSupply(string tag) => _gear.Value.FindSupply(tag);

    /// <inheritdoc/>
    public IReadOnlyList<string> Near(GearKind kind, string tag) => _gear.Value.Near(kind, tag);

    private static async Task<GearSnapshot> ReadAsync(string folder)
    {
        if (StoreFolder.TroubleWith(folder) is { } trouble)
            throw trouble;
        using var store = new Store(folder, TimeProvider.System);
        await store.OpenAsync();
        using var cache = new LibraryCache(store);
        return await cache.NowAsync();
    }
}
