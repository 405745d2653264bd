using Loadmark.Storage.Acceptances;
using Loadmark.Storage.Rigs;

namespace Loadmark.Storage.Tests;

/// <summary>What was measured on finished rigs.</summary>
public sealed class AcceptanceStoreTests : IDisposable
{
    private static readonly AcceptanceContent First = new("12ab34cd", "rig: board\n", "by: x\n", "open");
    private static readonly AcceptanceContent Second = First with { Readings = "by: x\n\nplug,open\nbrick/1 plug 1,-9.02 V\n", Verdict = "accepted" };

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task It_grows_until_it_is_signed_and_then_stays()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("board", "rig: board\n", _token);
        var begun = (await store.Acceptances.BeginAsync(rig.Id, First, _token))!;
        var saved = await store.Acceptances.SaveAsync(begun.Id, begun.Revision, Second, signs: false, _token);
        Assert.Equal((SaveState.Saved, 2, null), (saved.State, saved.Acceptance!.Revision, saved.Acceptance.Signed));

        // Another window still has the first one: it is told, and nothing of the later one is lost.
        var late = await store.Acceptances.SaveAsync(begun.Id, begun.Revision, First, signs: false, _token);
        Assert.Equal((SaveState.Conflict, Second), (late.State, late.Acceptance!.Content));

        var signed = await store.Acceptances.SaveAsync(begun.Id, 2, Second, signs: true, _token);
        Assert.NotNull(signed.Acceptance!.Signed);
        Assert.Equal(SaveState.Conflict, (await store.Acceptances.SaveAsync(begun.Id, 3, First, signs: false, _token)).State);
        Assert.Equal(SaveState.Conflict, (await store.Acceptances.ThrowAwayAsync(begun.Id, 3, _token)).State);
        Assert.Equal([signed.Acceptance], await store.Acceptances.ListAsync(rig.Id, _token));
    }

    [Fact]
    public async Task One_that_is_not_signed_can_be_thrown_away_and_rigs_keep_their_own()
    {
        using var store = await _folder.OpenAsync();
        var (one, other) = (await store.Rigs.AddAsync("one", "rig: one\n", _token), await store.Rigs.AddAsync("other", "rig: other\n", _token));
        var begun = (await store.Acceptances.BeginAsync(one.Id, First, _token))!;
        var later = (await store.Acceptances.BeginAsync(one.Id, Second, _token))!;
        var others = (await store.Acceptances.BeginAsync(other.Id, Second, _token))!;
        Assert.Equal([later, begun], await store.Acceptances.ListAsync(one.Id, _token));
        Assert.Equal(SaveState.Saved, (await store.Acceptances.ThrowAwayAsync(begun.Id, begun.Revision, _token)).State);
        Assert.Equal([later], await store.Acceptances.ListAsync(one.Id, _token));
        Assert.Equal([others], await store.Acceptances.ListAsync(other.Id, _token));
        Assert.Equal(SaveState.Gone, (await store.Acceptances.ThrowAwayAsync(begun.Id, begun.Revision, _token)).State);
        Assert.Null(await store.Acceptances.BeginAsync(Guid.NewGuid(), First, _token));
        await store.Rigs.RemoveAsync(other.Id, other.Revision, _token);
        Assert.Null(await store.Acceptances.BeginAsync(other.Id, First, _token));
    }

    /// <summary>A backup has the records, and so has what is salvaged of a damaged database.</summary>
    [Theory]
    [InlineData("UPDATE Counts SET Value = Value + 1")]
    [InlineData("UPDATE Rigs SET Name = 'other'")]
    public async Task Backups_and_what_is_salvaged_have_them_too(string damage)
    {
        var backup = Path.Combine(_folder.Path, "kept.db");
        StoredAcceptance kept;
        Guid rig;
        using (var store = await _folder.OpenAsync())
        {
            rig = (await store.Rigs.AddAsync("board", "rig: board\n", _token)).Id;
            kept = (await store.Acceptances.BeginAsync(rig, Second, _token))!;
            await store.Copies.BackUpAsync(backup, cancellationToken: _token);
            await store.Acceptances.ThrowAwayAsync(kept.Id, kept.Revision, _token);
            await store.Copies.RestoreAsync(backup, _token);
            Assert.Equal([kept], await store.Acceptances.ListAsync(rig, _token));
            await store.Copies.KeepTodayAsync();
        }

        Outside.Ask(_folder.Database, $"PRAGMA foreign_keys = OFF; {damage}");
        using (var store = new Store(_folder.Path, TimeProvider.System))
        {
            Assert.NotNull((await store.OpenAsync(_token)).Fault);
            await store.Copies.SalvageAsync(cancellationToken: _token);
            await store.OpenAsync(_token);
            Assert.Contains(kept, await store.Acceptances.ListAsync(rig, _token));
        }
    }
}
