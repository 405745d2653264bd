namespace Loadmark.Storage.Tests;

/// <summary>A folder of one test, gone after it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("loadmark-storage-").FullName;

    /// <summary>Not made yet: the store makes it.</summary>
    public string Path => System.IO.Path.Combine(_root, "kept");

    public string Database => System.IO.Path.Combine(Path, "loadmark.db");

    /// <summary>A store on the folder that is open and holds nothing wrong.</summary>
    public async Task<Store> OpenAsync(TimeProvider? clock = null)
    {
        var store = new Store(Path, clock ?? TimeProvider.System);
        var opening = await store.OpenAsync(TestContext.Current.CancellationToken);
        Assert.Null(opening.Trouble);
        Assert.Null(opening.Fault);
        return store;
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);
}
