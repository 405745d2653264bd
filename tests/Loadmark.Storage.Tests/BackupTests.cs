using Loadmark.Storage.Faults;
using Loadmark.Storage.Tests.Children;

namespace Loadmark.Storage.Tests;

/// <summary>Backups, made while others write.</summary>
public sealed class BackupTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    private string Target => Path.Combine(Path.GetDirectoryName(_folder.Path)!, "backup.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_backup_is_a_database_of_its_own_for_the_user_alone()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", Child.TextAfter(1), _token);
        rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", Child.TextAfter(2), "edit", _token)).Rig!;

        var report = await store.Copies.BackUpAsync(Target, cancellationToken: _token);
        Assert.Equal((Target, 1, 0, new FileInfo(Target).Length), (report.File, report.Contents.Rigs, report.Contents.Unreadable, report.Bytes));
        Assert.Equal("ok", Outside.Ask(Target, "PRAGMA integrity_check"));
        Assert.Equal("delete", Outside.Ask(Target, "PRAGMA journal_mode"));
        Assert.Equal([Target], Directory.GetFiles(Path.GetDirectoryName(Target)!));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Target));

        using var other = new TemporaryFolder();
        Directory.CreateDirectory(other.Path);
        File.Copy(Target, other.Database);
        using var copy = await other.OpenAsync();
        Assert.Equal(rig, await copy.Rigs.FindAsync(rig.Id, _token));
        Assert.Equal(Child.TextAfter(1), (await copy.Rigs.UndoAsync(rig.Id, rig.Revision, _token)).Rig!.Text);
    }

    [Fact]
    public async Task While_edits_are_saved_a_backup_has_each_whole_or_not_at_all()
    {
        using var store = await _folder.OpenAsync();
        var id = (await store.Rigs.AddAsync("0", Child.TextAfter(0), _token)).Id;
        using var child = ChildProcess.Start("save", _folder.Path, $"{id}");
        try
        {
            var last = 0;
            for (var time = 0; time < 8; time++)
            {
                var said = SavedEdit.Parse((await child.StandardOutput.ReadLineAsync(_token))!).Edit;
                await store.Copies.BackUpAsync(Target, overwrite: true, cancellationToken: _token);
                Assert.Equal("ok", Outside.Ask(Target, "PRAGMA integrity_check"));
                var edits = int.Parse(Outside.Ask(Target, "SELECT Name FROM Rigs")!);
                Assert.True(edits >= said, $"the backup has {edits} edits, and {said} were saved before it began");
                Assert.True(edits >= last);
                last = edits;
                Assert.Equal($"{Math.Min(edits, RigStore.EditsKept)}", Outside.Ask(Target, "SELECT COUNT(*) FROM Edits"));
            }

            Assert.True(last > 0);
        }
        finally
        {
            child.Kill();
        }
    }

    [Fact]
    public async Task A_file_that_is_there_is_replaced_only_when_asked()
    {
        using var store = await _folder.OpenAsync();
        await File.WriteAllTextAsync(Target, "a letter", _token);
        await AssertFaultAsync(StoreFault.AlreadyThere, $"There is a file {Target} already.", () => store.Copies.BackUpAsync(Target, cancellationToken: _token));
        Assert.Equal("a letter", await File.ReadAllTextAsync(Target, _token));
        await store.Copies.BackUpAsync(Target, overwrite: true, cancellationToken: _token);
        Assert.Equal("ok", Outside.Ask(Target, "PRAGMA integrity_check"));
    }

    [Theory]
    [InlineData("loadmark.db")]
    [InlineData("Loadmark.DB")]
    [InlineData("loadmark.db-wal")]
    public async Task Never_into_the_database_itself_by_whatever_way(string name)
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        var link = Path.Combine(Path.GetDirectoryName(_folder.Path)!, "link");
        Directory.CreateSymbolicLink(link, _folder.Path);
        foreach (var folder in (string[])[_folder.Path, link, Path.Combine(_folder.Path, "..", "kept")])
        {
            var before = Directory.GetFiles(_folder.Path).Order(StringComparer.Ordinal).ToArray();
            await AssertFaultAsync(StoreFault.AlreadyThere, "itself", () => store.Copies.BackUpAsync(Path.Combine(folder, name), overwrite: true, cancellationToken: _token));
            Assert.Equal(before, Directory.GetFiles(_folder.Path).Order(StringComparer.Ordinal));
        }

        Assert.Equal(rig, await store.Rigs.FindAsync(rig.Id, _token));
        await store.Copies.BackUpAsync(Path.Combine(_folder.Path, "monday.db"), cancellationToken: _token);
    }

    [Fact]
    public async Task Where_nothing_is_kept_nothing_is_made()
    {
        await AssertFaultAsync(StoreFault.NotThere, _folder.Database, () => new StoreCopies(_folder.Path, TimeProvider.System).BackUpAsync(Target, cancellationToken: _token));
        Assert.False(Directory.Exists(_folder.Path));
        Assert.False(File.Exists(Target));
        using var store = await _folder.OpenAsync();
        await AssertFaultAsync(StoreFault.AlreadyThere, "is a folder", () => store.Copies.BackUpAsync(_folder.Path, overwrite: true, cancellationToken: _token));
        await AssertFaultAsync(StoreFault.NotWritable, "cannot be written", () => store.Copies.BackUpAsync(Path.Combine(Target, "deeper.db"), cancellationToken: _token));
    }

    [Fact]
    public async Task A_damaged_rig_is_counted_and_keeps_nobody_from_a_backup()
    {
        using var store = await _folder.OpenAsync();
        await store.Rigs.AddAsync("good", Child.TextAfter(1), _token);
        var bad = await store.Rigs.AddAsync("bad", Child.TextAfter(2), _token);
        Outside.Ask(_folder.Database, "UPDATE Rigs SET Text = x'017777' WHERE Name = 'bad'");
        var report = await store.Copies.BackUpAsync(Target, cancellationToken: _token);
        Assert.Equal((2, 1), (report.Contents.Rigs, report.Contents.Unreadable));
        await AssertFaultAsync(StoreFault.Damaged, "the rig bad (table Rigs). Nothing was restored.", () => store.Copies.RestoreAsync(Target, _token));
        Assert.Equal(StoreFault.Damaged, (await Assert.ThrowsAsync<StorageException>(() => store.Rigs.FindAsync(bad.Id, _token))).Fault);
    }

    [Fact]
    public async Task A_disk_that_is_full_is_said_and_nothing_is_half_there()
    {
        var said = await ChildProcess.RunOnSmallDiskAsync(_folder.Path, "4m", "copies-full", _folder.Path);
        Assert.StartsWith($"DiskFull: The disk of {_folder.Path}/second.db is full. No backup was written.", said[0], StringComparison.Ordinal);
        Assert.StartsWith($"DiskFull: The disk of {_folder.Path}/backup.db is full. No backup was written.", said[1], StringComparison.Ordinal);
        Assert.StartsWith($"DiskFull: The disk of {_folder.Path}/kept/loadmark.db is full. Nothing was restored; what was kept before is there still.", said[2], StringComparison.Ordinal);
        Assert.Equal(["rigs 21", "files backup.db ballast loadmark.db loadmark.db-shm loadmark.db-wal", "restored 20, before True, now 20"], said[3..]);
    }

    [Fact]
    public async Task A_disk_that_is_read_only_gives_a_backup_and_takes_none()
    {
        var said = await ChildProcess.RunOnSmallDiskAsync(_folder.Path, "4m", "copies-read-only", _folder.Path);
        Assert.Equal("backed up 1", said[0]);
        Assert.StartsWith($"NotWritable: {_folder.Path}/backup.db cannot be written. No backup was written.", said[1], StringComparison.Ordinal);
        Assert.StartsWith("NotWritable: Nothing was restored.", said[2], StringComparison.Ordinal);
        Assert.Equal(["restored 1", "same True"], said[3..]);
    }

    private static async Task AssertFaultAsync(StoreFault fault, string words, Func<Task> action)
    {
        var thrown = await Assert.ThrowsAsync<StorageException>(action);
        Assert.Equal(fault, thrown.Fault);
        Assert.Contains(words, thrown.Message, StringComparison.Ordinal);
    }
}
