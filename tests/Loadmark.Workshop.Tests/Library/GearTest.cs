using Loadmark.Core.Gear;
using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.Tests.Library;

/// <summary>A library and rigs that are really kept, in a folder of the test's own.</summary>
public abstract class GearTest : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-gear-").FullName;

    protected GearTest()
    {
        Store = new Store(_folder, TimeProvider.System, RigMentions.Of);
        Cache = new LibraryCache(Store);
        Editor = new LibraryEditor(Store);
        Affected = new AffectedRigs(Store, Cache);
    }

    protected static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private protected Store Store { get; }

    private protected LibraryCache Cache { get; }

    private protected LibraryEditor Editor { get; }

    private protected AffectedRigs Affected { get; }

    public async ValueTask InitializeAsync() => Assert.Null((await Store.OpenAsync(Stop)).Trouble);

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        Cache.Dispose();
        Store.Dispose();
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>Puts gear into the library, new or over what is there.</summary>
    private protected async Task<LibraryGear> KeepAsync(string yaml)
    {
        var preview = ImportPreview.Of(await Cache.NowAsync(Stop), GearFileReader.Read(yaml, "gear.yaml"));
        Assert.All(preview.Rows, row => Assert.Null(row.Refusal));
        var result = await Editor.TakeAsync(preview, _ => true, "test", Stop);
        Assert.Empty(result.Overtaken);
        var first = preview.Rows[0];
        return (await Cache.NowAsync(Stop)).Find(first.Kind!.Value, first.Tag)!;
    }

    private protected async Task<StoredRig> KeepRigAsync(string text) =>
        await Store.Rigs.AddAsync(RigFileReader.Read(text, "", await Cache.NowAsync(Stop)).Rig?.Name ?? "unreadable", text, Stop);

    private protected async Task<List<AffectedRig>> AffectedByAsync(LibraryGear gear)
    {
        var found = new List<AffectedRig>();
        await foreach (var rig in Affected.FindAsync(gear, Stop))
            found.Add(rig);
        return [.. found.OrderBy(rig => rig.Rig.Name, StringComparer.Ordinal)];
    }

    private protected async Task<string> TextOfAsync(AffectedRig rig) => (await Store.Rigs.FindAsync(rig.Rig.Id, Stop))!.Text;

    private protected static (GearKind, string)[] TagsOf(IEnumerable<LibraryGear> gear) => [.. gear.Select(one => (one.Kind, one.Tag))];
}
