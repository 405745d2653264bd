using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.DataFolders;

/// <summary>The rigs and the gear that are kept in a folder, opened for one command. The page may have the same folder open.</summary>
public sealed class OpenLibrary : IDisposable
{
    private OpenLibrary(Store store, string? remark)
    {
        Remark = remark;
        Store = store;
        Cache = new LibraryCache(store);
        Editor = new LibraryEditor(store);
    }

    /// <summary>What is kept.</summary>
    public Store Store { get; }

    /// <summary>What is to be said though it is open; null for nothing.</summary>
    public string? Remark { get; }

    /// <summary>The gear of the library, kept in memory.</summary>
    public LibraryCache Cache { get; }

    /// <summary>Changes the gear.</summary>
    public LibraryEditor Editor { get; }

    /// <summary>Opens what is kept in a folder; makes it where there is nothing.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <returns>What is kept; or why it cannot be used.</returns>
    public static async Task<(OpenLibrary? Library, string? Trouble)> OpenAsync(
        string folder, TimeProvider clock, CancellationToken cancellation)
    {
        var store = new Store(folder, clock, RigMentions.Of);
        var opening = await store.OpenAsync(cancellation);
        if (opening.Trouble is null)
            return (new OpenLibrary(store, opening.Remark), null);
        store.Dispose();
        return (null, opening.Trouble);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Cache.Dispose();
        Store.Dispose();
    }
}
