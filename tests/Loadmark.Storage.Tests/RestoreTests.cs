using Loadmark.Core.Gear;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Rigs;
using Loadmark.Storage.Sqlite;
using Loadmark.Storage.Tests.Children;
using Loadmark.Storage.Tests.Schemas;

namespace Loadmark.Storage.Tests;

/// <summary>Restoring, while others use the store.</summary>
public sealed class RestoreTests : IDisposable
{
    private const int Kills = 6;

    private static readonly FixedClock Clock = new(new DateTimeOffset(2027, 1, 2, 3, 4, 5, TimeSpan.Zero));

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    private string Backup => Path.Combine(Path.GetDirectoryName(_folder.Path)!, "backup.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Everything_is_as_it_was_and_what_was_there_is_beside_it()
    {
        using var store = await _folder.OpenAsync(Clock);
        var rig = await store.Rigs.AddAsync("rig", "rig: one\n", _token);
        rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: two\n", "two", _token)).Rig!;
        var gone = await store.Rigs.AddAsync("gone", "rig: gone\n", _token);
        await store.Rigs.RemoveAsync(gone.Id, gone.Revision, _token);
        await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        var later = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: three\n", "three", _token)).Rig!;
        var extra = await store.Rigs.AddAsync("extra", "rig: extra\n", _token);

        var report = await store.Copies.RestoreAsync(Backup, _token);
        var previous = Path.Combine(_folder.Path, "backups", "loadmark-20270102T030405-before-restore.db");
        Assert.Equal(new RestoreReport(Backup, new CopyContents(Rigs: 1, Gear: 0, Unreadable: 0), previous, WasOlder: false, WasDamaged: false), report);

        // The store that was open all along sees it, and a second one too.
        var now = (await store.Rigs.FindAsync(rig.Id, _token))!;
        Assert.Equal((rig.Text, rig.UndoWhat, rig.RedoWhat), (now.Text, now.UndoWhat, now.RedoWhat));
        Assert.True(now.Revision > later.Revision);
        Assert.Null(await store.Rigs.FindAsync(extra.Id, _token));
        Assert.Equal("rig: one\n", (await store.Rigs.UndoAsync(rig.Id, now.Revision, _token)).Rig!.Text);
        Assert.Equal(SaveState.Saved, (await store.Rigs.RestoreAsync(gone.Id, _token)).State);
        Assert.Equal("ok", Outside.Ask(_folder.Database, "PRAGMA integrity_check"));

        await store.Copies.RestoreAsync(previous, _token);
        Assert.Equal("rig: three\n", (await store.Rigs.FindAsync(rig.Id, _token))!.Text);
        Assert.Equal("rig: extra\n", (await store.Rigs.FindAsync(extra.Id, _token))!.Text);
        Assert.True(File.Exists(previous.Replace(".db", "-2.db", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_page_that_is_open_is_told_at_its_next_edit_whatever_was_restored_in_between()
    {
        using var empty = new TemporaryFolder();
        var nothing = Path.Combine(Path.GetDirectoryName(empty.Path)!, "nothing.db");
        using (var other = await empty.OpenAsync())
            await other.Copies.BackUpAsync(nothing, cancellationToken: _token);

        using var store = await _folder.OpenAsync();
        var first = await store.Rigs.AddAsync("rig", "rig: first\n", _token);
        await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        var seen = new List<StoredRig> { first };
        for (var round = 0; round < 3; round++)
        {
            // By counting on alone, the restored rig would come to each of these again with another text.
            for (var edit = 0; edit < 3; edit++)
                seen.Add((await store.Rigs.SaveAsync(first.Id, seen[^1].Revision, "rig", $"rig: {round}.{edit}\n", "edit", _token)).Rig!);
            if (round > 0)
                await store.Copies.RestoreAsync(nothing, _token);
            await store.Copies.RestoreAsync(Backup, _token);
            foreach (var old in seen)
            {
                var outcome = await store.Rigs.SaveAsync(old.Id, old.Revision, "rig", "rig: over\n", "over", _token);
                Assert.Equal(SaveState.Conflict, outcome.State);
                Assert.Equal("rig: first\n", outcome.Rig!.Text);
            }

            seen.Add((await store.Rigs.FindAsync(first.Id, _token))!);
        }
    }

    [Fact]
    public async Task Who_reads_and_writes_meanwhile_sees_the_old_or_the_new_and_loses_nothing_unsaid()
    {
        using var store = await _folder.OpenAsync();
        var ids = new List<Guid>();
        for (var number = 0; number < 40; number++)
            ids.Add((await store.Rigs.AddAsync("old", Child.TextAfter(number), _token)).Id);
        await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        for (var number = 0; number < 40; number++)
        {
            var rig = (await store.Rigs.FindAsync(ids[number], _token))!;
            await store.Rigs.SaveAsync(rig.Id, rig.Revision, "new", Child.TextAfter(100 + number), "edit", _token);
        }

        using var reader = await _folder.OpenAsync();
        var stop = new CancellationTokenSource();
        var read = Task.Run(
            async () =>
            {
                var mixed = 0;
                while (!stop.IsCancellationRequested)
                    mixed += (await reader.Rigs.ListAsync(_token)).Select(rig => rig.Name == "old").Distinct().Count() > 1 ? 1 : 0;
                return mixed;
            },
            _token);
        var before = (await store.Rigs.FindAsync(ids[0], _token))!;
        for (var time = 0; time < 3; time++)
        {
            var previous = (await store.Copies.RestoreAsync(Backup, _token)).Previous!;
            await store.Copies.RestoreAsync(previous, _token);
        }

        await stop.CancelAsync();
        Assert.Equal(0, await read);
        Assert.Equal(SaveState.Conflict, (await store.Rigs.SaveAsync(ids[0], before.Revision, "x", "", "x", _token)).State);
    }

    [Fact]
    public async Task Killed_in_the_middle_it_is_the_old_or_the_new_whole()
    {
        var chance = new Random(20261127);
        using (var store = await _folder.OpenAsync())
        {
            for (var number = 0; number < 60; number++)
                await store.Rigs.AddAsync("backup", Child.TextAfter(number), _token);
            await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        }

        var restored = 0;
        var longest = TimeSpan.FromMilliseconds(400);
        for (var time = 0; time < Kills; time++)
        {
            Outside.Change(_folder.Database, "UPDATE Rigs SET Name = 'present'");
            using (var child = ChildProcess.Start("restore", _folder.Path, Backup))
            {
                Assert.Equal("starting", await child.StandardOutput.ReadLineAsync(_token));
                var clock = System.Diagnostics.Stopwatch.StartNew();
                if (time == 0)
                {
                    Assert.Equal("restored", await child.StandardOutput.ReadLineAsync(_token));
                    longest = clock.Elapsed;
                }
                else
                {
                    await Task.Delay(longest * (0.3 + (0.9 * chance.NextDouble())), _token);
                }

                child.Kill();
                await child.WaitForExitAsync(_token);
            }

            Assert.Equal("ok", Outside.Ask(_folder.Database, "PRAGMA integrity_check"));
            using var store = await _folder.OpenAsync();
            var rigs = await store.Rigs.ListAsync(_token);
            Assert.Equal(60, rigs.Length);
            var name = Assert.Single(rigs.Select(rig => rig.Name).Distinct());
            restored += name == "backup" ? 1 : 0;
            foreach (var whole in Directory.GetFiles(Path.Combine(_folder.Path, "backups"), "loadmark-*-before-restore*.db"))
                Assert.Equal("ok", Outside.Ask(whole, "PRAGMA integrity_check"));
        }

        Assert.InRange(restored, 1, Kills);
    }

    [Fact]
    public async Task An_older_one_is_brought_forward_in_a_copy_and_a_newer_one_refused()
    {
        using (var store = await _folder.OpenAsync())
        {
            await store.Rigs.AddAsync("today", "rig: today\n", _token);
            await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        }

        var bytes = await File.ReadAllBytesAsync(Backup, _token);
        using var other = new TemporaryFolder();
        var later = new DatabaseFile(other.Path, typeof(Tomorrow).Assembly);
        using (var store = new Store(later, TimeProvider.System, RigStore.EditsKept))
        {
            await store.OpenAsync(_token);
            var report = await store.Copies.RestoreAsync(Backup, _token);
            Assert.True(report.WasOlder);
            Assert.Equal("nobody", Outside.Ask(other.Database, "SELECT Owner FROM Rigs"));
            Assert.Equal(bytes, await File.ReadAllBytesAsync(Backup, _token));

            await store.Copies.BackUpAsync(Backup, overwrite: true, cancellationToken: _token);
        }

        await AssertRefusedAsync(StoreFault.NewerSchema, Backup);
    }

    [Fact]
    public async Task What_is_no_backup_is_refused_and_nothing_changes()
    {
        using (var store = await _folder.OpenAsync())
        {
            for (var number = 0; number < 20; number++)
                await store.Rigs.AddAsync($"{number}", Child.TextAfter(number), _token);
            await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        }

        await AssertRefusedAsync(StoreFault.NotThere, Backup + ".not");
        var whole = await File.ReadAllBytesAsync(Backup, _token);
        foreach (var (fault, content) in ((StoreFault, byte[])[])[
            (StoreFault.NotADatabase, []), (StoreFault.NotADatabase, "SQLite format 3"u8.ToArray()), (StoreFault.NotADatabase, new byte[9000]),
            (StoreFault.Damaged, whole[..(whole.Length / 2)]), (StoreFault.Damaged, Spoilt(whole))])
        {
            await File.WriteAllBytesAsync(Backup, content, _token);
            await AssertRefusedAsync(fault, Backup);
            Assert.Equal(content, await File.ReadAllBytesAsync(Backup, _token));
        }

        foreach (var sql in (string[])[
            "CREATE TABLE Recipes (Name TEXT)",
            "CREATE TABLE Rigs (Id); CREATE TABLE __EFMigrationsHistory (MigrationId TEXT, ProductVersion TEXT)"])
        {
            File.Delete(Backup);
            Outside.Ask(Backup, sql);
            await AssertRefusedAsync(StoreFault.NotADatabase, Backup);
        }

        foreach (var sql in (string[])["UPDATE Rigs SET Revision = 9223372036854775807", "ALTER TABLE Rigs ADD COLUMN More TEXT", "UPDATE Rigs SET Revision = 'x'"])
        {
            await File.WriteAllBytesAsync(Backup, whole, _token);
            Outside.Change(Backup, sql);
            await AssertRefusedAsync(StoreFault.NotADatabase, Backup);
        }
    }

    [Fact]
    public async Task Nothing_but_rows_comes_over()
    {
        using var store = await _folder.OpenAsync();
        await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        Outside.Ask(Backup, "CREATE TRIGGER Trap AFTER UPDATE ON Rigs BEGIN DELETE FROM Rigs; END");
        Outside.Ask(Backup, "CREATE TABLE Hidden (X TEXT)");
        await store.Copies.RestoreAsync(Backup, _token);
        Assert.Equal("0", Outside.Ask(_folder.Database, "SELECT COUNT(*) FROM sqlite_master WHERE name IN ('Trap', 'Hidden')"));
        Assert.Single(await store.Rigs.ListAsync(_token));
    }

    [Fact]
    public async Task Into_a_folder_that_is_not_there_and_from_a_database_that_is_in_use()
    {
        using var other = new TemporaryFolder();
        using var store = await other.OpenAsync();
        await store.Rigs.AddAsync("rig", Child.TextAfter(3), _token);
        Assert.True(File.Exists(other.Database + "-shm"));

        var report = await new StoreCopies(_folder.Path, TimeProvider.System).RestoreAsync(other.Database, _token);
        Assert.Null(report.Previous);
        using var restored = await _folder.OpenAsync();
        Assert.Equal(Child.TextAfter(3), (await restored.Rigs.FindAsync((await restored.Rigs.ListAsync(_token))[0].Id, _token))!.Text);
    }

    [Theory]
    [InlineData(9000)]
    [InlineData(40)]
    public async Task A_database_that_cannot_be_opened_is_set_aside_whole(int length)
    {
        using (var store = await _folder.OpenAsync())
        {
            await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
            await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        }

        await File.WriteAllTextAsync(_folder.Database, new string('x', length), _token);
        await File.WriteAllTextAsync(_folder.Database + "-wal", "a log", _token);
        var report = await new StoreCopies(_folder.Path, Clock).RestoreAsync(Backup, _token);
        var aside = Path.Combine(_folder.Path, "loadmark-damaged-20270102T030405.db");
        Assert.Equal((aside, true, 1), (report.Previous, report.WasDamaged, report.Contents.Rigs));
        Assert.Equal(new string('x', length), await File.ReadAllTextAsync(aside, _token));
        Assert.Equal("a log", await File.ReadAllTextAsync(aside + "-wal", _token));
        using var restored = await _folder.OpenAsync();
        Assert.Single(await restored.Rigs.ListAsync(_token));
    }

    [Fact]
    public async Task One_that_a_program_has_open_is_not_set_aside()
    {
        StoredRig rig;
        using (var store = await _folder.OpenAsync())
        {
            rig = await store.Rigs.AddAsync("0", Child.TextAfter(0), _token);
            await store.Rigs.AddAsync("other", "rig: other\n", _token);
            await store.Copies.BackUpAsync(Backup, cancellationToken: _token);
        }

        using var child = ChildProcess.Start("save", _folder.Path, $"{rig.Id}");
        try
        {
            await child.StandardOutput.ReadLineAsync(_token);
            Outside.Ask(_folder.Database, "PRAGMA busy_timeout = 5000; UPDATE Rigs SET Seal = 1 WHERE Name = 'other'");
            var fault = await Assert.ThrowsAsync<StorageException>(() => new StoreCopies(_folder.Path, Clock).RestoreAsync(Backup, _token));
            Assert.Equal(StoreFault.Busy, fault.Fault);
            Assert.StartsWith($"Nothing was restored. A program has {_folder.Database} open, which is damaged.", fault.Message, StringComparison.Ordinal);
            Assert.True(File.Exists(_folder.Database));
        }
        finally
        {
            child.Kill();
        }
    }

    [Fact]
    public async Task Gear_comes_back_too_and_who_has_the_library_at_hand_reads_it_anew()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        var kept = (await store.Gear.AddAsync(Content("drive-3", "kept"), "typed", _token)).Gear!;
        await store.Gear.Uses.DecideAsync(rig.Id, kept.Id, kept.Revision, takesNew: false, _token);
        var away = (await store.Gear.AddAsync(Content("drive-5", "away"), "typed", _token)).Gear!;
        await store.Gear.RemoveAsync(away.Id, away.Revision, _token);
        Assert.Equal(new CopyContents(Rigs: 1, Gear: 1, Unreadable: 0), (await store.Copies.BackUpAsync(Backup, cancellationToken: _token)).Contents);
        var changed = (await store.Gear.SaveAsync(kept.Id, kept.Revision, Content("drive-3", "changed"), "typed", _token)).Gear!;
        await store.Gear.AddAsync(Content("drive-4", "later"), "typed", _token);
        var seen = await store.Gear.NewsAsync(0, _token);
        Assert.Equal((3, false), (seen.Gear.Length, seen.IsAll));

        Assert.Equal(new CopyContents(Rigs: 1, Gear: 1, Unreadable: 0), (await store.Copies.RestoreAsync(Backup, _token)).Contents);
        var news = await store.Gear.NewsAsync(seen.Stamp, _token);
        Assert.True(news.IsAll);
        Assert.True(news.Stamp > seen.Stamp);
        Assert.Equal(kept.Content, Assert.Single(news.Gear, static gear => !gear.IsRemoved).Content);
        Assert.False((await store.Gear.NewsAsync(news.Stamp, _token)).IsAll);
        Assert.Equal(GearState.Conflict, (await store.Gear.SaveAsync(kept.Id, changed.Revision, Content("drive-3", "over"), "typed", _token)).State);
        var now = news.Gear.Single(gear => gear.Id == kept.Id);
        Assert.Single(await store.Gear.Uses.DecisionsAsync(kept.Id, now.Revision, _token));
        Assert.Equal(GearState.Saved, (await store.Gear.SaveAsync(kept.Id, now.Revision, Content("drive-3", "next"), "typed", _token)).State);
        Assert.Equal(["kept", "next"], (await store.Gear.HistoryAsync(kept.Id, _token)).Select(static change => change.After!.Name));

        static GearContent Content(string tag, string name) => new() { Kind = GearKind.Load, Tag = tag, Name = name, Text = "" };
    }

    private static byte[] Spoilt(byte[] whole)
    {
        var spoilt = whole.ToArray();
        for (var page = 1; page < whole.Length / 4096; page++)
        {
            if (whole[page * 4096] is 2 or 5 or 10 or 13)
                spoilt.AsSpan(page * 4096, 64).Fill(0xA5);
        }

        return spoilt;
    }

    private async Task AssertRefusedAsync(StoreFault fault, string path)
    {
        var before = Directory.Exists(_folder.Path) ? Outside.Ask(_folder.Database, "SELECT group_concat(Id || Revision) FROM Rigs") : null;
        var thrown = await Assert.ThrowsAsync<StorageException>(() => new StoreCopies(_folder.Path, TimeProvider.System).RestoreAsync(path, _token));
        Assert.Equal(fault, thrown.Fault);
        Assert.Contains(path, thrown.Message, StringComparison.Ordinal);
        Assert.Contains("Nothing was restored", thrown.Message, StringComparison.Ordinal);
        Assert.Equal(before, Outside.Ask(_folder.Database, "SELECT group_concat(Id || Revision) FROM Rigs"));
    }
}
