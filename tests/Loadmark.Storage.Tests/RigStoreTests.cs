using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;

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
        using (var store = new Store(_folder.Path, TimeProvider.System))
            Assert.Equal(new StoreOpening { WasCreated = true }, await store.OpenAsync(_token));
        using (var store = new Store(_folder.Path, TimeProvider.System))
            Assert.Equal(new StoreOpening(), await store.OpenAsync(_token));
    }

    [Fact]
    public async Task Undo_and_redo_survive_closing()
    {
        StoredRig rig;
        using (var store = await _folder.OpenAsync())
        {
            rig = await store.Rigs.AddAsync("Pit board", "rig: Pit board\n", _token);
            Assert.Null(rig.UndoWhat);
            rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "Pit board", "rig: Pit board # mine\n", "comment", _token)).Rig!;
            rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "Pit", "rig: Pit # mine\n", "rename", _token)).Rig!;
            Assert.Equal(("rename", null), (rig.UndoWhat, rig.RedoWhat));
        }

        using (var store = await _folder.OpenAsync())
        {
            Assert.Equal(rig, await store.Rigs.FindAsync(rig.Id, _token));
            rig = (await store.Rigs.UndoAsync(rig.Id, rig.Revision, _token)).Rig!;
            Assert.Equal(("Pit board", "rig: Pit board # mine\n", "comment", "rename", 4), (rig.Name, rig.Text, rig.UndoWhat, rig.RedoWhat, rig.Revision));
        }

        using (var store = await _folder.OpenAsync())
        {
            rig = (await store.Rigs.RedoAsync(rig.Id, rig.Revision, _token)).Rig!;
            Assert.Equal(("Pit", "rig: Pit # mine\n", "rename", null, 5), (rig.Name, rig.Text, rig.UndoWhat, rig.RedoWhat, rig.Revision));
        }
    }

    [Fact]
    public async Task The_list_has_the_last_changed_first_and_no_removed_rig()
    {
        using var store = await _folder.OpenAsync();
        var first = await store.Rigs.AddAsync("first", "rig: first\n", _token);
        var second = await store.Rigs.AddAsync("second", "rig: second\n", _token);
        var third = await store.Rigs.AddAsync("third", "rig: third\n", _token);
        Assert.Equal(["third", "second", "first"], (await store.Rigs.ListAsync(_token)).Select(rig => rig.Name));

        await store.Rigs.SaveAsync(first.Id, first.Revision, "first", "rig: other\n", "edit", _token);
        Assert.Equal(third.Revision, await store.Rigs.RevisionAsync(third.Id, _token));
        var removed = await store.Rigs.RemoveAsync(third.Id, third.Revision, _token);
        Assert.Null(await store.Rigs.RevisionAsync(third.Id, _token));
        Assert.Equal(["first", "second"], (await store.Rigs.ListAsync(_token)).Select(rig => rig.Name));

        var gone = await store.Rigs.SaveAsync(third.Id, removed.Rig!.Revision, "third", "rig: other\n", "edit", _token);
        Assert.Equal(new SaveOutcome(SaveState.Gone, removed.Rig), gone);
        Assert.Equal(SaveState.Saved, (await store.Rigs.RestoreAsync(third.Id, _token)).State);
        Assert.Equal(["third", "first", "second"], (await store.Rigs.ListAsync(_token)).Select(rig => rig.Name));
        Assert.Equal(second, await store.Rigs.FindAsync(second.Id, _token));
    }

    [Fact]
    public async Task A_rig_that_never_was()
    {
        using var store = await _folder.OpenAsync();
        var gone = new SaveOutcome(SaveState.Gone, null);
        Assert.Null(await store.Rigs.FindAsync(Guid.Empty, _token));
        Assert.Null(await store.Rigs.RevisionAsync(Guid.Empty, _token));
        Assert.Equal(gone, await store.Rigs.SaveAsync(Guid.Empty, 1, "rig", "", "edit", _token));
        Assert.Equal(gone, await store.Rigs.UndoAsync(Guid.Empty, 1, _token));
        Assert.Equal(gone, await store.Rigs.RestoreAsync(Guid.Empty, _token));
    }

    [Fact]
    public async Task What_is_given_up_is_not_saved()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        var givenUp = new CancellationToken(canceled: true);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => store.Rigs.SaveAsync(rig.Id, 1, "rig", "rig: other\n", "edit", givenUp));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => store.Rigs.RemoveAsync(rig.Id, 1, givenUp));
        Assert.Equal(rig, await store.Rigs.FindAsync(rig.Id, _token));
        Assert.Equal(SaveState.Saved, (await store.Rigs.SaveAsync(rig.Id, 1, "rig", "rig: other\n", "edit", _token)).State);
    }
}
