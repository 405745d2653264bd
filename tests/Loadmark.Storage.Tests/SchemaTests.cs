using Loadmark.Core.Gear;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;
using Loadmark.Storage.Tests.Schemas;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Tests;

/// <summary>From every released schema forward, never back, and never half. Each has a dump in Data/, with rows as the program of that day wrote them.</summary>
public sealed class SchemaTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_migrations_lead_to_the_model()
    {
        using var context = new StorageContext(DatabaseFile.OptionsFor("Data Source=:memory:"));
        Assert.False(context.Database.HasPendingModelChanges(), "the model has changed: WRITES_MIGRATIONS=true dotnet ef migrations add NAME");
    }

    [Fact]
    public async Task A_database_of_the_first_release_opens_with_all_that_was_in_it()
    {
        MakeFirst();
        using var store = await _folder.OpenAsync();
        await CheckRowsOfFirstAsync(store);
    }

    [Fact]
    public async Task A_database_of_the_second_release_opens_with_all_that_was_in_it()
    {
        Make("20261125230125_Gear.sql");
        using var store = await _folder.OpenAsync();
        var gear = (await store.Gear.FindAsync(GearKind.Load, "dl-02", _token))!;
        Assert.Equal(("DL-02", "Delay ⎓", "9V⎓ 300mA", 3L), (gear.Content.Tag, gear.Content.Name, gear.Content.Label, gear.Revision));
        Assert.Equal("name: Delay ⎓\nlabel: 9V⎓ 300mA\nrun: 212 mA\nstart: 520 mA for 1.5 s\n", gear.Content.Text);
        Assert.Equal(["pit", "spare"], gear.Content.Words);
        Assert.Equal(["imported from g.yaml", "run 212 mA", "run 212 mA"], (await store.Gear.HistoryAsync(gear.Id, _token)).Select(change => change.What.Split(':')[0]));
        Assert.Equal([0.212m, 0.52m], (await store.Gear.Readings.ListAsync(gear.Id, _token)).Select(one => one.Reading.Current.Value));
        var rig = Assert.Single(await store.Gear.Uses.RigsWithAsync(GearKind.Load, "DL-02", _token));
        Assert.Equal([new(rig.Rig.Id, true)], await store.Gear.Uses.DecisionsAsync(gear.Id, 3, _token));
        Assert.NotNull(await store.Gear.FindAsync(GearKind.Lead, "chain", _token));
    }

    [Fact]
    public async Task A_database_of_the_third_release_opens_with_all_that_was_in_it()
    {
        Make("20261130164935_Seals.sql");
        using var store = await _folder.OpenAsync();
        var rig = (await store.Rigs.FindAsync((await store.Rigs.ListAsync(_token)).Single().Id, _token))!;
        Assert.Equal(("board", "rig: board\n# more\n", "a comment"), (rig.Name, rig.Text, rig.UndoWhat));
        var gear = (await store.Gear.FindAsync(GearKind.Load, "delay-2", _token))!;
        Assert.Equal("9V DC 300mA", gear.Content.Label);
        Assert.Equal([0.21m], (await store.Gear.Readings.ListAsync(gear.Id, _token)).Select(static one => one.Reading.Current.Value));
        Assert.Equal([new(rig.Id, true)], await store.Gear.Uses.DecisionsAsync(gear.Id, 1, _token));
    }

    [Fact]
    public async Task A_later_program_brings_it_forward_after_a_backup_and_this_one_then_refuses_it()
    {
        MakeFirst();
        var clock = new FixedClock(new DateTimeOffset(2027, 1, 2, 3, 4, 5, TimeSpan.Zero));
        var backup = Path.Combine(_folder.Path, "backups", "loadmark-20270102T030405-before-upgrade.db");
        Directory.CreateDirectory(Path.GetDirectoryName(backup)!);
        await File.WriteAllTextAsync(backup, "another file of that name", _token);
        backup = backup.Replace(".db", "-2.db", StringComparison.Ordinal);

        using (var later = new Store(new DatabaseFile(_folder.Path, typeof(Tomorrow).Assembly), clock, RigStore.EditsKept))
            Assert.Equal(new StoreOpening { Backup = backup }, await later.OpenAsync(_token));

        Assert.Equal("nobody", Outside.Ask(_folder.Database, "SELECT DISTINCT Owner FROM Rigs"));
        Assert.Equal("3", Outside.Ask(_folder.Database, "SELECT COUNT(*) FROM Edits"));
        Assert.Equal("ok", Outside.Ask(_folder.Database, "PRAGMA integrity_check"));
        Assert.Equal("", Outside.Ask(_folder.Database, "PRAGMA foreign_key_check"));

        using (var present = new Store(_folder.Path, TimeProvider.System))
        {
            var opening = await present.OpenAsync(_token);
            Assert.Equal(StoreFault.NewerSchema, opening.Fault);
            Assert.Equal($"{_folder.Database} was written by a newer version of Loadmark. Nothing was changed in it. Use that version, or choose another folder with --data.", opening.Trouble);
            Assert.Equal(StoreFault.NewerSchema, (await Assert.ThrowsAsync<StorageException>(() => present.Rigs.ListAsync(_token))).Fault);
        }

        // The backup is a database of its own, as it was before.
        Assert.Equal("ok", Outside.Ask(backup, "PRAGMA integrity_check"));
        File.Delete(_folder.Database);
        File.Move(backup, _folder.Database);
        using var store = await _folder.OpenAsync();
        await CheckRowsOfFirstAsync(store);
    }

    [Fact]
    public async Task A_migration_that_fails_leaves_the_database_as_it_was()
    {
        MakeFirst();

        // Stands in the way of the table that the later migration makes while it rebuilds Rigs.
        using (var connection = Outside.Open(_folder.Database))
            connection.Run("CREATE VIEW ef_temp_Rigs AS SELECT 1");

        using (var later = new Store(new DatabaseFile(_folder.Path, typeof(Tomorrow).Assembly), TimeProvider.System, RigStore.EditsKept))
            await Assert.ThrowsAsync<SqliteException>(() => later.OpenAsync(_token));

        Assert.Equal("0", Outside.Ask(_folder.Database, "SELECT COUNT(*) FROM pragma_table_info('Rigs') WHERE name = 'Owner'"));
        using var store = await _folder.OpenAsync();
        await CheckRowsOfFirstAsync(store);
    }

    [Fact]
    public async Task SQLite_itself_says_how_the_database_is_kept()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);
        await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: other\n", "edit", _token);
        Assert.Equal("wal", Outside.Ask(_folder.Database, "PRAGMA journal_mode"));
        Assert.Equal("ok", Outside.Ask(_folder.Database, "PRAGMA integrity_check"));
        Assert.Equal("1", Outside.Ask(_folder.Database, "SELECT COUNT(*) FROM Edits JOIN Rigs ON RigId = Id"));

        // What SQLite keeps for each connection, asked over one as the store uses it: 2 is FULL.
        using var context = new DatabaseFile(_folder.Path).NewContext();
        context.Database.OpenConnection();
        Assert.Equal((1, 2, 5000), (Ask("foreign_keys"), Ask("synchronous"), Ask("busy_timeout")));

        long Ask(string setting) => long.Parse(((SqliteConnection)context.Database.GetDbConnection()).Column($"PRAGMA {setting}").Single());
    }

    private void MakeFirst() => Make("20261125190152_Rigs.sql");

    private void Make(string dump)
    {
        Directory.CreateDirectory(_folder.Path);
        using var connection = Outside.Open(_folder.Database);
        connection.Run(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", dump)));
    }

    private async Task CheckRowsOfFirstAsync(Store store)
    {
        var listed = Assert.Single(await store.Rigs.ListAsync(_token));
        var rig = (await store.Rigs.FindAsync(listed.Id, _token))!;
        Assert.Equal(("Pit board ⎓", "rig: Pit board\n# mine ⎓\n", "add a comment", "add a load", 5), (rig.Name, rig.Text, rig.UndoWhat, rig.RedoWhat, rig.Revision));
        Assert.Equal(new DateTimeOffset(2026, 11, 25, 19, 30, 7, TimeSpan.Zero), rig.Changed);
        rig = (await store.Rigs.RedoAsync(rig.Id, rig.Revision, _token)).Rig!;
        Assert.Equal(("Pit board ⎓", "rig: Pit board\nloads:\n" + string.Concat(Enumerable.Range(1, 40).Select(number => $"  OD-{number:00}: {{ kind: analog drive }}\n")) + "# mine ⎓\n"), (rig.Name, rig.Text));
        foreach (var text in new[] { "rig: Pit board\n# mine ⎓\n", "rig: Pit board\n", "rig: Pit board\n" })
        {
            rig = (await store.Rigs.UndoAsync(rig.Id, rig.Revision, _token)).Rig!;
            Assert.Equal(text, rig.Text);
        }

        Assert.Equal(("Pit board", null), (rig.Name, rig.UndoWhat));
    }
}
