using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Sessions;

namespace Loadmark.Workshop.Tests.Sessions;

/// <summary>Sessions over rigs that are really kept, in a folder of the test's own.</summary>
public abstract class SessionTest : IAsyncLifetime
{
    private readonly Store _store;
    private readonly LibraryCache _cache;
    private readonly List<RigSession> _sessions = [];
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-session-").FullName;

    protected SessionTest()
    {
        _store = new Store(Kept, TimeProvider.System, RigMentions.Of);
        _cache = new LibraryCache(_store);
    }

    protected static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private protected RigStore Store => _store.Rigs;

    /// <summary>Where the rigs are kept.</summary>
    protected string Kept => Path.Combine(_folder, "kept");

    public async ValueTask InitializeAsync() => Assert.Null((await _store.OpenAsync(Stop)).Trouble);

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        _sessions.ForEach(static session => session.Dispose());
        _cache.Dispose();
        _store.Dispose();
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>A rig, kept and opened.</summary>
    private protected async Task<RigSession> OpenAsync(string text) =>
        await ReopenAsync((await Store.AddAsync(RigFileReader.Read(text, "").Rig?.Name ?? "any", text, Stop)).Id);

    /// <summary>Another window on a rig that is kept.</summary>
    private protected async Task<RigSession> ReopenAsync(Guid id)
    {
        var session = new RigSession(Store, _cache);
        _sessions.Add(session);
        Assert.True(await session.OpenAsync(id));
        return session;
    }
}
