using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;

namespace Loadmark.Storage.Tests;

/// <summary>Several at once on one file: nothing is overwritten in silence.</summary>
public sealed class ConcurrencyTests : IDisposable
{
    private const int Tasks = 50;

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task The_second_of_two_stores_is_told_and_shown_the_other_s_rig()
    {
        using var mine = await _folder.OpenAsync();
        using var theirs = await _folder.OpenAsync();
        var rig = await mine.Rigs.AddAsync("rig", "rig: rig\n", _token);

        var first = await theirs.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: theirs\n", "theirs", _token);
        Assert.Equal(SaveState.Saved, first.State);
        Assert.Equal(new SaveOutcome(SaveState.Conflict, first.Rig), await mine.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: mine\n", "mine", _token));
        Assert.Equal(SaveState.Conflict, (await mine.Rigs.UndoAsync(rig.Id, rig.Revision, _token)).State);
        Assert.Equal(SaveState.Conflict, (await mine.Rigs.RedoAsync(rig.Id, rig.Revision, _token)).State);
        Assert.Equal(SaveState.Conflict, (await mine.Rigs.RemoveAsync(rig.Id, rig.Revision, _token)).State);
        Assert.Equal(first.Rig, await mine.Rigs.FindAsync(rig.Id, _token));

        // Also when the text is the same as before: the user has not seen what is there.
        Assert.Equal(SaveState.Conflict, (await mine.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: theirs\n", "mine", _token)).State);
        Assert.Equal(SaveState.Saved, (await mine.Rigs.SaveAsync(rig.Id, first.Rig!.Revision, "rig", "rig: mine\n", "mine", _token)).State);
    }

    [Fact]
    public async Task Of_fifty_who_start_from_one_revision_one_is_saved_and_all_others_are_told()
    {
        using var one = await _folder.OpenAsync();
        using var two = await _folder.OpenAsync();
        var rig = await one.Rigs.AddAsync("rig", "rig: 0\n", _token);
        var outcomes = await Task.WhenAll(Enumerable.Range(1, Tasks).Select(number =>
            Task.Run(() => (number % 2 == 0 ? one : two).Rigs.SaveAsync(rig.Id, rig.Revision, "rig", $"rig: {number}\n", $"edit {number}"), _token)));

        var saved = Assert.Single(outcomes, outcome => outcome.State == SaveState.Saved);
        Assert.Equal(Tasks - 1, outcomes.Count(outcome => outcome.State == SaveState.Conflict));
        Assert.All(outcomes, outcome => Assert.Equal(saved.Rig, outcome.Rig));
        Assert.Equal("1", Outside.Ask(_folder.Database, "SELECT COUNT(*) FROM Edits"));
    }

    [Fact]
    public async Task Fifty_who_try_again_after_each_conflict_lose_nothing()
    {
        const int Each = 4;
        using var one = await _folder.OpenAsync();
        using var two = await _folder.OpenAsync();
        var id = (await one.Rigs.AddAsync("rig", "", _token)).Id;
        var conflicts = 0;
        await Task.WhenAll(Enumerable.Range(0, Tasks).Select(task => Task.Run(
            async () =>
            {
                var store = task % 2 == 0 ? one : two;
                var rig = (await store.Rigs.FindAsync(id))!;
                for (var line = 0; line < Each;)
                {
                    var outcome = await store.Rigs.SaveAsync(id, rig.Revision, "rig", $"{rig.Text}{task}.{line}\n", $"{task}.{line}");
                    rig = outcome.Rig!;
                    if (outcome.State == SaveState.Saved)
                        line++;
                    else
                        Interlocked.Increment(ref conflicts);
                }
            },
            _token)));

        var kept = (await one.Rigs.FindAsync(id, _token))!;
        var expected = Enumerable.Range(0, Tasks).SelectMany(task => Enumerable.Range(0, Each).Select(line => $"{task}.{line}"));
        Assert.Equal(expected.Order(), kept.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order());
        Assert.Equal(1 + (Tasks * Each), kept.Revision);
        Assert.NotEqual(0, conflicts);

        // Every edit is there to be undone, in the order in which they were saved.
        foreach (var line in kept.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Reverse())
        {
            Assert.Equal(line, kept.UndoWhat);
            kept = (await one.Rigs.UndoAsync(id, kept.Revision, _token)).Rig!;
        }

        Assert.Equal("", kept.Text);
    }

    [Fact]
    public async Task Of_several_that_open_a_new_folder_at_once_one_makes_the_database()
    {
        var stores = Enumerable.Range(0, 8).Select(_ => new Store(_folder.Path, TimeProvider.System)).ToArray();
        var openings = await Task.WhenAll(stores.Select(store => Task.Run(() => store.OpenAsync(_token))));
        Assert.All(openings, opening => Assert.Null(opening.Trouble));
        Assert.Single(openings, opening => opening.WasCreated);
        foreach (var store in stores)
            store.Dispose();
    }

    [Fact]
    public async Task A_database_that_another_program_keeps_to_itself_is_told_after_some_seconds()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        using var other = Outside.Open(_folder.Database);
        using (other.BeginTransaction(deferred: false))
        {
            var fault = await Assert.ThrowsAsync<StorageException>(() => store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: mine\n", "mine", _token));
            Assert.Equal(StoreFault.Busy, fault.Fault);
            Assert.Contains("not saved", fault.Message, StringComparison.Ordinal);
            Assert.Equal(rig, await store.Rigs.FindAsync(rig.Id, _token));
        }

        Assert.Equal(SaveState.Saved, (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: mine\n", "mine", _token)).State);
    }
}
