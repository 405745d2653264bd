namespace Loadmark.Storage.Tests;

/// <summary>One user's day: what is kept is found again.</summary>
public sealed class RigStoreTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_first_opening_says_that_it_made_the_database()
    {
        using (var store = new RigStore(_folder.Path, TimeProvider.System))
            Assert.Equal(new StoreOpening { WasCreated = true }, await store.OpenAsync(_token));
        using (var store = new RigStore(_folder.Path, TimeProvider.System))
            Assert.Equal(new StoreOpening(), await store.OpenAsync(_token));
    }

    [Fact]
    public async Task Undo_and_redo_survive_closing()
    {
        StoredRig rig;
        using (var store = await _folder.OpenAsync())
        {
            rig = await store.AddAsync("Pit board", "rig: Pit board\n", _token);
            Assert.Null(rig.UndoWhat);
            rig = (await store.SaveAsync(rig.Id, rig.Revision, "Pit board", "rig: Pit board # mine\n", "comment", _token)).Rig!;
            rig = (await store.SaveAsync(rig.Id, rig.Revision, "Pit", "rig: Pit # mine\n", "rename", _token)).Rig!;
            Assert.Equal(("rename", null), (rig.UndoWhat, rig.RedoWhat));
        }

        using (var store = await _folder.OpenAsync())
        {
            Assert.Equal(rig, await store.FindAsync(rig.Id, _token));
            rig = (await store.UndoAsync(rig.Id, rig.Revision, _token)).Rig!;
            Assert.Equal(("Pit board", "rig: Pit board # mine\n", "comment", "rename", 4), (rig.Name, rig.Text, rig.UndoWhat, rig.RedoWhat, rig.Revision));
        }

        using (var store = await _folder.OpenAsync())
        {
            rig = (await store.RedoAsync(rig.Id, rig.Revision, _token)).Rig!;
            Assert.Equal(("Pit", "rig: Pit # mine\n", "rename", null, 5), (rig.Name, rig.Text, rig.UndoWhat, rig.RedoWhat, rig.Revision));
        }
    }
}
