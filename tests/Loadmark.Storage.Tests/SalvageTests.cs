using Loadmark.Core.Gear;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Tests.Children;
using Loadmark.Storage.Tests.Damage;

namespace Loadmark.Storage.Tests;

/// <summary>What can still be read of a damaged store goes to a new one, and nothing else does; the damaged file keeps all that it has.</summary>
public sealed class SalvageTests : IDisposable
{
    private static readonly FixedClock Clock = new(new DateTimeOffset(2027, 1, 2, 3, 4, 5, TimeSpan.Zero));

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    private StoreCopies Copies => new(_folder.Path, Clock);

    private string Aside => Path.Combine(_folder.Path, "loadmark-damaged-20270102T030405.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_rig_whose_history_is_damaged_keeps_its_text_and_the_rest_is_as_it_was()
    {
        await SampleAsync();
        Outside.Ask(_folder.Database, "UPDATE Edits SET What = 'other' WHERE NameAfter = 'one' AND Number = 2");
        var damaged = await File.ReadAllBytesAsync(_folder.Database, _token);

        var report = await Copies.SalvageAsync(cancellationToken: _token);
        Assert.Equal((_folder.Database, Aside), (report.File, report.Aside));
        Assert.Equal(new CopyContents(Rigs: 2, Gear: 2, Unreadable: 0), report.Contents);
        Assert.Equal(["edit 2 of the rig one (table Edits)", "edits of the rig one that lie beyond a lost one: 1"], report.Lost);
        Assert.Empty(report.FromBackup);
        Assert.Equal(damaged, await File.ReadAllBytesAsync(Aside, _token));

        using var store = await _folder.OpenAsync();
        var rigs = (await store.Rigs.ListAsync(_token)).ToDictionary(static rig => rig.Name, static rig => rig.Id);
        var one = (await store.Rigs.FindAsync(rigs["one"], _token))!;
        Assert.Equal("rig: one, 3\n", one.Text);
        one = (await store.Rigs.UndoAsync(one.Id, one.Revision, _token)).Rig!;
        Assert.Equal(("rig: one, 2\n", null), (one.Text, one.UndoWhat));
        var two = (await store.Rigs.FindAsync(rigs["two"], _token))!;
        for (var edit = 2; edit >= 0; edit--)
            two = (await store.Rigs.UndoAsync(two.Id, two.Revision, _token)).Rig!;
        Assert.Equal("rig: two, 0\n", two.Text);
        var gear = (await store.Gear.FindAsync(GearKind.Load, "delay-2", _token))!;
        Assert.Equal(["typed", "typed"], (await store.Gear.HistoryAsync(gear.Id, _token)).Select(static change => change.What));
        Assert.Equal(GearState.Saved, (await store.Gear.RemoveAsync(gear.Id, gear.Revision, _token)).State);
    }

    [Fact]
    public async Task What_is_lost_comes_from_the_last_good_backup_and_is_said()
    {
        await SampleAsync(withBackup: true);
        Outside.Ask(_folder.Database, "UPDATE Rigs SET Text = x'0078' WHERE Name = 'one'; UPDATE Gear SET Label = 'x' WHERE Tag = 'delay-2'");
        var report = await Copies.SalvageAsync(cancellationToken: _token);
        Assert.Equal(["the rig one (table Rigs)", "the gear delay-2 (table Gear)"], report.Lost.Items.Order().Reverse());
        Assert.Equal(2, report.FromBackup.Count);
        Assert.All(report.FromBackup, static said => Assert.Matches(@"^the (rig one|gear delay-2) .* of \d{4}-\d\d-\d\d \d\d:\d\d$", said));

        using var store = await _folder.OpenAsync();
        var one = (await store.Rigs.FindAsync((await store.Rigs.ListAsync(_token)).Single(static rig => rig.Name == "one").Id, _token))!;
        Assert.Equal("rig: one, 1\n", one.Text);
        Assert.Equal("rig: one, 0\n", (await store.Rigs.UndoAsync(one.Id, one.Revision, _token)).Rig!.Text);
        var gear = (await store.Gear.FindAsync(GearKind.Load, "delay-2", _token))!;
        Assert.Equal("9V DC 1mA", gear.Content.Label);
        Assert.Single(await store.Gear.HistoryAsync(gear.Id, _token));
    }

    [Fact]
    public async Task Without_a_backup_it_is_said_what_is_gone()
    {
        await SampleAsync();
        Outside.Ask(_folder.Database, "UPDATE Rigs SET Text = x'0078' WHERE Name = 'one'");
        var report = await Copies.SalvageAsync(cancellationToken: _token);
        Assert.Equal(["the rig one (table Rigs)", "all but its edits of the rig one"], report.Lost);
        using var store = await _folder.OpenAsync();
        Assert.Equal("two", Assert.Single(await store.Rigs.ListAsync(_token)).Name);
    }

    /// <summary>Nothing fails to be read where an empty page stands in the place of a table's.</summary>
    [Fact]
    public async Task Of_a_table_that_seems_empty_it_is_said_how_much_is_gone()
    {
        await SampleAsync();
        var (gear, empty) = (PageOf("Gear"), PageOf("GearReadings"));
        var bytes = await File.ReadAllBytesAsync(_folder.Database, _token);
        var page = bytes[gear..(gear + 4096)];
        bytes.AsSpan(empty, 4096).CopyTo(bytes.AsSpan(gear));
        page.CopyTo(bytes.AsSpan(empty));
        await File.WriteAllBytesAsync(_folder.Database, bytes, _token);
        var report = await Copies.SalvageAsync(cancellationToken: _token);
        Assert.Contains("rows of the table Gear: 2 of 2", report.Lost);
        Assert.Equal(new CopyContents(Rigs: 2, Gear: 0, Unreadable: 0), report.Contents);

        int PageOf(string table) =>
            (int.Parse(Outside.Ask(_folder.Database, $"SELECT rootpage FROM sqlite_master WHERE name = '{table}'")!) - 1) * 4096;
    }

    [Fact]
    public async Task To_a_file_of_its_own_leaves_the_damaged_one_where_it_is()
    {
        await SampleAsync();
        Outside.Ask(_folder.Database, "UPDATE Edits SET What = 'other' WHERE Number = 1");
        var target = Path.Combine(_folder.Path, "saved.db");
        var report = await Copies.SalvageAsync(target, _token);
        Assert.Equal((target, null), (report.File, report.Aside));
        Assert.Equal(StoreFault.AlreadyThere, (await Assert.ThrowsAsync<StorageException>(() => Copies.SalvageAsync(target, _token))).Fault);
        Assert.Equal(2, (await Copies.RestoreAsync(target, _token)).Contents.Rigs);
        Assert.True(File.Exists(Aside));
    }

    [Fact]
    public async Task What_is_whole_is_left_alone_and_what_cannot_be_read_at_all_too()
    {
        await SampleAsync();
        var whole = await Assert.ThrowsAsync<StorageException>(() => Copies.SalvageAsync(cancellationToken: _token));
        Assert.Equal($"{_folder.Database} is whole. There is nothing to salvage.", whole.Message);
        var text = new string('x', 9000);
        await File.WriteAllTextAsync(_folder.Database, text, _token);
        var nothing = await Assert.ThrowsAsync<StorageException>(() => Copies.SalvageAsync(cancellationToken: _token));
        Assert.StartsWith($"Nothing can be read of {_folder.Database}. It was left as it is.", nothing.Message, StringComparison.Ordinal);
        Assert.Equal(text, await File.ReadAllTextAsync(_folder.Database, _token));
        Assert.False(File.Exists(Aside));
    }

    /// <summary>Whatever the damage: what comes out is whole, and each line of it is one that was kept.</summary>
    [Fact]
    public async Task Of_pages_that_are_gone_the_rest_is_saved_and_nothing_made_up()
    {
        await SampleStore.MakeAsync(_folder.Path);
        string[] kept;
        using (var store = await _folder.OpenAsync())
            kept = [.. await SampleStore.ReadAsync(store)];
        var whole = await File.ReadAllBytesAsync(_folder.Database, _token);
        var (saved, all) = (0, 0);
        for (var page = 1; page < whole.Length / 4096; page++)
        {
            using var place = new TemporaryFolder();
            Directory.CreateDirectory(place.Path);
            var damaged = (byte[])whole.Clone();
            damaged.AsSpan(page * 4096, 4096).Clear();
            await File.WriteAllBytesAsync(place.Database, damaged, _token);
            await new StoreCopies(place.Path, Clock).SalvageAsync(cancellationToken: _token);
            using var store = await place.OpenAsync();
            var lines = await SampleStore.ReadAsync(store);

            // What undoing would take back is not said of a rig whose edits are gone.
            Assert.All(lines, line => Assert.Contains(kept, one => Bare(one) == Bare(line)));
            (saved, all) = (saved + lines.Length, all + kept.Length);
        }

        Assert.True(saved > all * 3 / 4, $"{saved} of {all}");

        static string Bare(string line) => line.IndexOf("rig: ", StringComparison.Ordinal) is >= 0 and var text
            ? line[..line.IndexOf("+00:00", StringComparison.Ordinal)] + line[text..]
            : line;
    }

    /// <summary>Two rigs with three edits and two pieces of gear with two changes each; after the first of each, the backup.</summary>
    private async Task SampleAsync(bool withBackup = false)
    {
        using var store = await _folder.OpenAsync(Clock);
        for (var step = 0; step <= 3; step++)
        {
            foreach (var name in (string[])["one", "two"])
            {
                if (step == 0)
                    await store.Rigs.AddAsync(name, $"rig: {name}, 0\n", _token);
                else if ((await store.Rigs.ListAsync(_token)).Single(rig => rig.Name == name) is var rig)
                    await store.Rigs.SaveAsync(rig.Id, rig.Revision, name, $"rig: {name}, {step}\n", $"{step}", _token);
            }

            foreach (var tag in step is 1 or 2 ? (string[])["delay-2", "drive-3"] : [])
            {
                var content = new GearContent { Kind = GearKind.Load, Tag = tag, Label = $"9V DC {step}mA", Text = Child.TextAfter(step) };
                if (await store.Gear.FindAsync(GearKind.Load, tag, _token) is { } gear)
                    await store.Gear.SaveAsync(gear.Id, gear.Revision, content, "typed", _token);
                else
                    await store.Gear.AddAsync(content, "typed", _token);
            }

            if (step == 1 && withBackup)
                Assert.Null(await store.Copies.KeepTodayAsync());
        }
    }
}
