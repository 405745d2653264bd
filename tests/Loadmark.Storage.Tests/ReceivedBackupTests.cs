using Loadmark.Storage.Faults;

namespace Loadmark.Storage.Tests;

/// <summary>A backup that comes as a stream: written for the user alone, and gone at the end, whatever that is.</summary>
public sealed class ReceivedBackupTests : IDisposable
{
    private static readonly FixedClock Clock = new(new DateTimeOffset(2027, 1, 2, 3, 4, 5, TimeSpan.Zero));

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task It_is_in_a_file_of_the_users_own_until_it_is_restored_and_over_none_that_is_there()
    {
        using var store = await _folder.OpenAsync(Clock);
        var (bytes, rig) = await BackUpThenChangeAsync(store);
        var there = Path.Combine(_folder.Path, "loadmark-received.part");
        await File.WriteAllTextAsync(there, "another's", _token);
        var modes = new List<UnixFileMode>();
        var stream = new TroubledStream(bytes, bytes.Length, () =>
        {
            if (!OperatingSystem.IsWindows())
                modes.Add(File.GetUnixFileMode(Path.Combine(_folder.Path, "loadmark-received-2.part")));
        });
        var report = await store.Copies.RestoreAsync(stream, bytes.Length, "monday.db", cancellationToken: _token);
        Assert.Equal(("monday.db", 1), (report.File, report.Contents.Rigs));
        Assert.NotNull(report.Previous);
        Assert.Equal("rig: then\n", (await store.Rigs.FindAsync(rig, _token))!.Text);
        Assert.All(modes, static mode => Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, mode));
        Assert.Equal(OperatingSystem.IsWindows(), modes.Count == 0);
        Assert.Equal("another's", await File.ReadAllTextAsync(there, _token));
        Assert.Equal([there], Received);
    }

    [Theory]
    [InlineData(5_000, "The browser is gone.")] // breaks off
    [InlineData(5_000, null)] // ends too early
    public async Task One_that_does_not_come_whole_leaves_nothing_behind(int after, string? broken)
    {
        using var store = await _folder.OpenAsync(Clock);
        var (bytes, rig) = await BackUpThenChangeAsync(store);
        var stream = new TroubledStream(bytes, after, () => { }, broken);
        var fault = await Assert.ThrowsAsync<StorageException>(
            () => store.Copies.RestoreAsync(stream, bytes.Length, "monday.db", cancellationToken: _token));
        Assert.Equal("monday.db did not arrive whole. Nothing was restored. Choose it again.", fault.Message);
        Assert.Equal("rig: now\n", (await store.Rigs.FindAsync(rig, _token))!.Text);
        Assert.Empty(Received);
    }

    [Fact]
    public async Task One_that_is_longer_than_was_said_is_not_taken()
    {
        using var store = await _folder.OpenAsync(Clock);
        var (bytes, _) = await BackUpThenChangeAsync(store);
        using var stream = new MemoryStream(bytes);
        await Assert.ThrowsAsync<StorageException>(
            () => store.Copies.RestoreAsync(stream, bytes.Length - 1, "monday.db", cancellationToken: _token));
        Assert.Empty(Received);
    }

    [Fact]
    public async Task One_that_is_given_up_leaves_nothing_behind()
    {
        using var store = await _folder.OpenAsync(Clock);
        var (bytes, rig) = await BackUpThenChangeAsync(store);
        using var giveUp = new CancellationTokenSource();
        var stream = new TroubledStream(bytes, bytes.Length, giveUp.Cancel);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(
            () => store.Copies.RestoreAsync(stream, bytes.Length, "monday.db", cancellationToken: giveUp.Token));
        Assert.Equal("rig: now\n", (await store.Rigs.FindAsync(rig, _token))!.Text);
        Assert.Empty(Received);
    }

    [Fact]
    public async Task What_a_killed_program_left_goes_and_what_another_is_writing_stays()
    {
        using var store = await _folder.OpenAsync(Clock);
        await store.Rigs.AddAsync("rig", "rig: one\n", _token);
        string[] left = [.. ((string[])["", "-2"]).Select(number => Path.Combine(_folder.Path, $"loadmark-received{number}.part"))];
        foreach (var (index, file) in left.Index())
        {
            await File.WriteAllTextAsync(file, "half", _token);
            File.SetLastWriteTimeUtc(file, Clock.GetUtcNow().UtcDateTime.AddMinutes(index == 0 ? -61 : -59));
        }

        Assert.Null(await store.Copies.KeepTodayAsync());
        Assert.Equal([left[1]], Received);
    }

    private string[] Received => Directory.GetFiles(_folder.Path, "*received*");

    private async Task<(byte[] Bytes, Guid Rig)> BackUpThenChangeAsync(Store store)
    {
        var rig = await store.Rigs.AddAsync("rig", "rig: then\n", _token);
        var file = Path.Combine(Path.GetDirectoryName(_folder.Path)!, "backup.db");
        await store.Copies.BackUpAsync(file, cancellationToken: _token);
        await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: now\n", "edit", _token);
        return (await File.ReadAllBytesAsync(file, _token), rig.Id);
    }
}
