using System.Diagnostics;
using Loadmark.Storage.Tests.Children;

namespace Loadmark.Storage.Tests;

/// <summary>The program is killed (SIGKILL) at any moment; what it said is saved is there afterwards.</summary>
public sealed class PowerLossTests : IDisposable
{
    /// <summary>How often a database is killed while it is being made.</summary>
    private const int Times = 10;

    /// <summary>How often a child is killed that saves.</summary>
    private const int Rounds = 4;

    /// <summary>One kill ends the saving to several databases, each at a moment of its own: starting the child is what a kill costs.</summary>
    private const int AtOnce = 3;

    private readonly TemporaryFolder[] _folders = [.. Enumerable.Range(0, AtOnce).Select(static _ => new TemporaryFolder())];
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose()
    {
        foreach (var folder in _folders)
            folder.Dispose();
    }

    [Fact]
    public async Task No_saved_edit_is_lost_and_none_is_half_there()
    {
        var chance = new Random(20261125);
        var ids = new Guid[AtOnce];
        for (var which = 0; which < AtOnce; which++)
        {
            using var store = await _folders[which].OpenAsync();
            ids[which] = (await store.Rigs.AddAsync("0", Child.TextAfter(0), _token)).Id;
        }

        var atWork = 0;
        for (var round = 0; round < Rounds; round++)
        {
            var said = await KillWhileSavingAsync(ids, TimeSpan.FromMilliseconds(chance.Next(0, 60)));
            for (var which = 0; which < AtOnce; which++)
            {
                var (first, last) = said[which];
                atWork += last > first + 1 ? 1 : 0;
                await AssertSavedAsync(_folders[which], ids[which], last);
            }
        }

        // The child was killed at work, not while it was starting.
        Assert.InRange(atWork, Rounds * AtOnce / 2, Rounds * AtOnce);
        for (var which = 0; which < AtOnce; which++)
            await UndoAllAsync(_folders[which], ids[which]);
    }

    /// <summary>
    /// After a power cut the memory beside the database may be as it was before its log was begun anew: what it promises of the log then is in the
    /// database, and nothing is lost or said to be.
    /// </summary>
    [Fact]
    public async Task Memory_that_is_older_than_the_log_is_no_damage()
    {
        var (kept, after) = (_folders[0], _folders[1]);
        Directory.CreateDirectory(after.Path);
        using (var store = await kept.OpenAsync())
        {
            await store.Rigs.AddAsync("Before", "rig: Before\n", _token);

            // Whoever closes the last connection takes the log away, and other tests close all that this process keeps open.
            using var held = Outside.Open(kept.Database);
            using var look = held.CreateCommand();
            look.CommandText = "SELECT count(*) FROM Rigs";
            Assert.Equal(1L, await look.ExecuteScalarAsync(_token));
            await CopyAsync(kept.Database + "-shm", after.Database + "-shm");
            Assert.Equal("0", Outside.Ask(kept.Database, "PRAGMA wal_checkpoint(RESTART)"));
            await store.Rigs.AddAsync("After", "rig: After\n", _token);
            await CopyAsync(kept.Database, after.Database);
            await CopyAsync(kept.Database + "-wal", after.Database + "-wal");
        }

        using var opened = await after.OpenAsync();
        Assert.Equal(["After", "Before"], (await opened.Rigs.ListAsync(_token)).Select(static rig => rig.Name).Order(StringComparer.Ordinal));

        // By a program of its own: closing a file gives back the locks that this one has on it.
        async Task CopyAsync(string from, string to)
        {
            using var copy = Process.Start("cp", [from, to]);
            await copy.WaitForExitAsync(_token);
            Assert.Equal(0, copy.ExitCode);
        }
    }

    [Fact]
    public async Task Killed_while_the_database_is_being_made_it_opens_the_next_time()
    {
        var chance = new Random(20261126);
        var made = 0;
        var longest = await TimeToMakeAsync();
        for (var time = 0; time < Times; time++)
        {
            using var folder = new TemporaryFolder();
            using (var child = ChildProcess.Start("open", folder.Path))
            {
                Assert.Equal("starting", await child.StandardOutput.ReadLineAsync(_token));
                await Task.Delay(longest * chance.NextDouble() * 1.5, _token);
                child.Kill();
                await child.WaitForExitAsync(_token);
            }

            using var store = new Store(folder.Path, TimeProvider.System);
            var opening = await store.OpenAsync(_token);
            Assert.Null(opening.Trouble);
            made += opening.WasCreated ? 0 : 1;

            // Up and down: how long the making takes changes with what else the machine does, and the kills are to fall on both sides of it.
            longest *= opening.WasCreated ? 1.5 : 1 / 1.5;
            await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        }

        Assert.InRange(made, 1, Times - 1);
    }

    private async Task<TimeSpan> TimeToMakeAsync()
    {
        using var folder = new TemporaryFolder();
        using var child = ChildProcess.Start("open", folder.Path);
        Assert.Equal("starting", await child.StandardOutput.ReadLineAsync(_token));
        var clock = Stopwatch.StartNew();
        Assert.Equal("created True", await child.StandardOutput.ReadLineAsync(_token));
        return clock.Elapsed;
    }

    private async Task AssertSavedAsync(TemporaryFolder folder, Guid id, int last)
    {
        Assert.Equal("ok", Outside.Ask(folder.Database, "PRAGMA integrity_check"));
        using var store = await folder.OpenAsync();
        var rig = (await store.Rigs.FindAsync(id, _token))!;
        var edits = int.Parse(rig.Name);

        // What it said is saved, and at most the one that it was about to say.
        Assert.InRange(edits, last, last + 1);
        Assert.Equal((Child.TextAfter(edits), edits + 1), (rig.Text, rig.Revision));
        Assert.Equal($"{Math.Min(edits, RigStore.EditsKept)}", Outside.Ask(folder.Database, "SELECT COUNT(*) FROM Edits"));
    }

    /// <summary>What the child had said of each rig first and last when it was killed.</summary>
    private async Task<(int First, int Last)[]> KillWhileSavingAsync(Guid[] ids, TimeSpan after)
    {
        using var child = ChildProcess.Start(["save", .. ids.SelectMany((id, which) => new[] { _folders[which].Path, $"{id}" })]);
        var said = new (int First, int Last)?[AtOnce];

        // At work on all by then, however slow the machine is at starting it.
        while (said.Any(static seen => seen is not { } numbers || numbers.Last < numbers.First + 2))
            Note((await child.StandardOutput.ReadLineAsync(_token))!);
        await Task.Delay(after, _token);
        child.Kill();
        var rest = await child.StandardOutput.ReadToEndAsync(_token);
        await child.WaitForExitAsync(_token);

        // The last line may be cut short.
        foreach (var line in rest[..(rest.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries))
            Note(line);
        return [.. said.Select(static seen => seen!.Value)];

        void Note(string line)
        {
            var (which, edit) = SavedEdit.Parse(line);
            said[which] = (said[which]?.First ?? edit, edit);
        }
    }

    private async Task UndoAllAsync(TemporaryFolder folder, Guid id)
    {
        using var store = await folder.OpenAsync();
        var rig = (await store.Rigs.FindAsync(id, _token))!;
        while (rig.UndoWhat is not null)
        {
            var edits = int.Parse(rig.Name);
            rig = (await store.Rigs.UndoAsync(id, rig.Revision, _token)).Rig!;
            Assert.Equal(($"{edits - 1}", Child.TextAfter(edits - 1)), (rig.Name, rig.Text));
        }
    }
}
