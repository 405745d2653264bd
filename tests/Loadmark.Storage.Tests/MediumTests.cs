using System.Runtime.Versioning;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;
using Loadmark.Storage.Tests.Children;

namespace Loadmark.Storage.Tests;

/// <summary>Disks that are full or read-only, real ones: small file systems that a child mounts for itself (Linux, user namespaces).</summary>
public sealed class MediumTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_full_disk_is_said_and_survived()
    {
        var said = await ChildProcess.RunOnSmallDiskAsync(_folder.Path, "3m", "fill", _folder.Path);
        Assert.Equal("opened ", said[0]);
        Assert.Equal("DiskFull: The disk is full. The edit is not saved; what was saved before is still there. Free some space, then try again.", said[1]);
        Assert.Equal("same True", said[2]);
        Assert.Equal("second ", said[3]);
        Assert.StartsWith("new DiskFull: The disk of ", said[4], StringComparison.Ordinal);
        Assert.Equal("again True", said[5]);
        var name = said[6].Split(' ');
        Assert.Equal(int.Parse(name[3]) + 1, int.Parse(name[1]));
        Assert.Equal(7, said.Length);
    }

    [Fact]
    public async Task A_read_only_disk_is_said()
    {
        var said = await ChildProcess.RunOnSmallDiskAsync(_folder.Path, "3m", "read-only", _folder.Path);
        Assert.Equal(4, said.Length);
        Assert.StartsWith($"NotWritable: Rigs cannot be kept in {_folder.Database}: the place cannot be written.", said[1], StringComparison.Ordinal);
        Assert.StartsWith($"NotWritable: Rigs cannot be kept in {_folder.Path}/deeper/loadmark.db: the place cannot be written.", said[3], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_in_the_folder_s_place_is_said()
    {
        await File.WriteAllTextAsync(_folder.Path, "not a folder", _token);
        foreach (var path in new[] { _folder.Path, Path.Combine(_folder.Path, "deeper") })
        {
            using var store = new Store(path, TimeProvider.System);
            Assert.Equal(StoreFault.NotWritable, (await store.OpenAsync(_token)).Fault);
        }

        Assert.Equal("not a folder", await File.ReadAllTextAsync(_folder.Path, _token));
    }

    [Fact]
    public async Task A_database_that_is_taken_away_is_said_and_when_it_is_back_it_goes_on()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        Directory.Move(_folder.Path, _folder.Path + "-away");

        var fault = await Assert.ThrowsAsync<StorageException>(() => store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: mine\n", "mine", _token));
        Assert.Equal(StoreFault.NotWritable, fault.Fault);
        Assert.Equal("The database of the kept rigs cannot be found or written. The edit is not saved; what was saved before is still there. Check the folder's rights and that its disk is there and not read-only, then try again.", fault.Message);
        Assert.NotNull(fault.InnerException);
        Assert.False(Directory.Exists(_folder.Path));

        Directory.Move(_folder.Path + "-away", _folder.Path);
        Assert.Equal(rig, await store.Rigs.FindAsync(rig.Id, _token));
        Assert.Equal(SaveState.Saved, (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: mine\n", "mine", _token)).State);
    }

    [Fact]
    public async Task A_store_is_opened_first()
    {
        using var store = new Store(_folder.Path, TimeProvider.System);
        await Assert.ThrowsAsync<InvalidOperationException>(() => store.Rigs.ListAsync(_token));
        await Assert.ThrowsAsync<InvalidOperationException>(() => store.Rigs.AddAsync("rig", "", _token));
        Assert.False(Directory.Exists(_folder.Path));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task Folder_and_files_are_for_the_user_alone()
    {
        using var store = await _folder.OpenAsync();
        await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(_folder.Path));
        var files = Directory.GetFiles(_folder.Path);
        Assert.Equal(["loadmark.db", "loadmark.db-shm", "loadmark.db-wal"], files.Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(files, file => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file)));
    }
}
