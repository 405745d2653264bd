using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Tests.Children;

namespace Loadmark.Storage.Tests;

/// <summary>The copies that the program makes by itself.</summary>
public sealed class KeptCopiesTests : IDisposable
{
    private static readonly DateTimeOffset Start = new(2027, 1, 4, 9, 0, 0, TimeSpan.Zero);

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    private string Backups => Path.Combine(_folder.Path, "backups");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task One_a_day_checked_and_for_the_user_alone()
    {
        using var store = await _folder.OpenAsync(new FixedClock(Start));
        Assert.False(store.HasChanged);
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        Assert.True(store.HasChanged);
        Assert.Null(await store.Copies.KeepTodayAsync());
        await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: later\n", "later", _token);
        Assert.Null(await store.Copies.KeepTodayAsync());

        var copy = Assert.Single(store.Copies.Kept());
        Assert.Equal(new KeptCopy(Path.Combine(Backups, "loadmark-20270104T090000-day.db"), Start, CopyReason.Day, new FileInfo(copy.File).Length), copy);
        Assert.Equal("ok", Outside.Ask(copy.File, "PRAGMA integrity_check"));
        Assert.Equal([copy.File], Directory.GetFileSystemEntries(Backups));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(copy.File));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Backups));
        }

        await store.Copies.RestoreLastAsync(_token);
        Assert.Equal("rig: rig\n", (await store.Rigs.FindAsync(rig.Id, _token))!.Text);
        Assert.Equal([CopyReason.BeforeRestore, CopyReason.Day], store.Copies.Kept().Select(static one => one.Reason).Order().Reverse());
    }

    [Fact]
    public async Task As_many_days_and_weeks_stay_as_are_said_and_no_file_of_anybody_else_goes()
    {
        using (var store = await _folder.OpenAsync())
            await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        Directory.CreateDirectory(Backups);
        string[] others = ["monday.db", "loadmark-20200101T000000-mine.db", "loadmark-20200101T000000-day.db.txt", "loadmark-day.db"];
        foreach (var other in others)
            await File.WriteAllTextAsync(Path.Combine(Backups, other), "mine", _token);
        IReadOnlyList<KeptCopy> kept = [];
        for (var day = 0; day < 60; day++)
        {
            var copies = new StoreCopies(_folder.Path, new FixedClock(Start.AddDays(day)));
            Assert.Null(await copies.KeepTodayAsync());
            kept = copies.Kept();
            Assert.Equal(Start.AddDays(day), kept[0].Made);
        }

        // The last seven days, and the last of each of four weeks, the first of which is among the seven days or their week.
        var ages = kept.Select(copy => (Start.AddDays(59) - copy.Made).Days).ToList();
        Assert.Equal([0, 1, 2, 3, 4, 5, 6], ages[..7]);
        Assert.InRange(ages.Count, 9, 11);
        Assert.InRange(ages[^1], 14, 27);
        Assert.All(others, other => Assert.True(File.Exists(Path.Combine(Backups, other)), other));
    }

    [Fact]
    public void Neither_many_nor_large_ones_and_the_last_always_stays()
    {
        var many = Enumerable.Range(0, 20).Select(static at => new KeptCopy($"{at}", Start.AddHours(-at), CopyReason.BeforeRestore, 10)).ToList();
        Assert.Equal(many[CopyRota.Before..], CopyRota.Superfluous(many));
        var large = Enumerable.Range(0, 5).Select(static at => new KeptCopy($"{at}", Start.AddDays(-at), CopyReason.Day, CopyRota.MostBytes / 2)).ToList();
        Assert.Equal(large[2..], CopyRota.Superfluous(large));
        Assert.Empty(CopyRota.Superfluous([new KeptCopy("", Start, CopyReason.Day, long.MaxValue)]));
    }

    [Fact]
    public async Task What_is_damaged_is_not_copied_over_the_good_ones()
    {
        using var store = await _folder.OpenAsync(new FixedClock(Start));
        await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        await store.Copies.KeepTodayAsync();
        Outside.Ask(_folder.Database, "UPDATE Rigs SET Name = 'other'");
        var trouble = await new StoreCopies(_folder.Path, new FixedClock(Start.AddDays(1))).KeepTodayAsync();
        Assert.StartsWith($"Today's automatic backup was not made. {_folder.Database} is damaged.", trouble, StringComparison.Ordinal);
        Assert.Equal(Start, Assert.Single(store.Copies.Kept()).Made);
    }

    [Fact]
    public async Task The_last_good_one_is_the_last_that_is_whole()
    {
        using (var store = await _folder.OpenAsync(new FixedClock(Start)))
        {
            await store.Rigs.AddAsync("rig", Child.TextAfter(1), _token);
            await store.Copies.KeepTodayAsync();
        }

        var good = Path.Combine(Backups, "loadmark-20270104T090000-day.db");
        var bad = Path.Combine(Backups, "loadmark-20270105T090000-day.db");
        File.Copy(good, bad);
        Outside.Ask(bad, "UPDATE Rigs SET Name = 'other'");
        await File.WriteAllBytesAsync(Path.Combine(Backups, "loadmark-20270106T090000-day.db"), [1, 2, 3], _token);
        await File.WriteAllTextAsync(_folder.Database, new string('x', 9000), _token);

        using (var closed = new Store(_folder.Path, TimeProvider.System))
        {
            var trouble = (await closed.OpenAsync(_token)).Trouble!;
            Assert.EndsWith($"is put in its place by: loadmark restore --last --data {_folder.Path}.", trouble, StringComparison.Ordinal);
        }

        var report = await new StoreCopies(_folder.Path, TimeProvider.System).RestoreLastAsync(_token);
        Assert.Equal((good, true, 1), (report.File, report.WasDamaged, report.Contents.Rigs));
        File.Delete(good);
        File.Delete(_folder.Database);
        foreach (var made in Directory.GetFiles(Backups, "*before-restore*"))
            File.Delete(made);
        var fault = await Assert.ThrowsAsync<StorageException>(() => new StoreCopies(_folder.Path, TimeProvider.System).RestoreLastAsync(_token));
        Assert.Equal((StoreFault.NotThere, $"There is no automatic backup in {Backups} that is whole. Nothing was restored. Name a backup of your own."), (fault.Fault, fault.Message));
    }
}
