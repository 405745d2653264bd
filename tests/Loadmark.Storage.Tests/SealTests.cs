using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Storage.Entities;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Seals;
using Loadmark.Storage.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Loadmark.Storage.Tests;

/// <summary>What is not as it was saved is told, with its place: every table, every column, every row.</summary>
public sealed class SealTests : IDisposable
{
    private static readonly IModel Model = new StorageContext(DatabaseFile.OptionsFor("Data Source=:memory:")).Model;

    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_row_has_a_seal_of_every_value_in_it()
    {
        Assert.NotEmpty(Model.GetEntityTypes());
        foreach (var type in Model.GetEntityTypes())
        {
            var row = Assert.IsType<SealedRow>(Activator.CreateInstance(type.ClrType), exactMatch: false);
            var sealing = SealedType.Of(type);
            var seals = new HashSet<long> { sealing.SealOf(row) };
            foreach (var property in type.GetProperties().Where(static property => property.Name != nameof(SealedRow.Seal)))
            {
                property.PropertyInfo!.SetValue(row, Other(property.ClrType));
                Assert.True(seals.Add(sealing.SealOf(row)), $"{type.ShortName()}.{property.Name} is not in the seal");
            }

            Assert.DoesNotContain("a row", sealing.PlaceOf(row), StringComparison.Ordinal);
        }
    }

    /// <summary>The program computes a seal from its own values, and the check at opening from what SQLite has: both are to agree.</summary>
    [Fact]
    public async Task The_program_and_the_file_come_to_the_same_seals()
    {
        await SampleAsync();
        using (var context = new DatabaseFile(_folder.Path).NewContext())
        {
            var reading = context.GearReadings.First();
            foreach (var figure in (decimal[])[0m, 1m, 0.10m, 1e-12m, 12345678901234.123456789012m, decimal.MaxValue])
            {
                reading.Current = figure;
                reading.Duration = -figure;
                context.SaveChanges();
                Assert.Empty(Broken());
            }

            foreach (var text in (string[])["", "⎓ 🎸 'x'", "\r\n\t", new string('é', 4000)])
            {
                reading.Note = text;
                context.SaveChanges();
                Assert.Empty(Broken());
            }
        }

        // And every type of every table is among what was saved.
        using var file = Outside.Open(_folder.Database);
        Assert.All(SealedTable.In(file), table => Assert.True(table.Rows().Any(), $"{table.Name} has no row in this test"));
        Assert.Equal(Model.GetEntityTypes().Select(static type => type.GetTableName()).Order(), SealedTable.In(file).Select(static table => table.Name).Order());
    }

    [Fact]
    public async Task Every_value_that_is_another_is_told_at_opening()
    {
        await SampleAsync();
        var whole = await File.ReadAllBytesAsync(_folder.Database, _token);
        foreach (var type in Model.GetEntityTypes())
        {
            foreach (var column in type.GetProperties().Select(static property => property.GetColumnName()))
            {
                await File.WriteAllBytesAsync(_folder.Database, whole, _token);
                Outside.Ask(_folder.Database, $"""
                    PRAGMA foreign_keys = OFF;
                    UPDATE "{type.GetTableName()}" SET "{column}" = CASE typeof("{column}")
                        WHEN 'integer' THEN "{column}" + 1 WHEN 'null' THEN 0 WHEN 'blob' THEN CAST(x'00' || "{column}" AS BLOB) ELSE "{column}" || 'x' END
                    WHERE rowid = 1
                    """);
                var trouble = await TroubleAsync();
                Assert.True(trouble?.Contains($"(table {type.GetTableName()})", StringComparison.Ordinal) == true, $"{type.GetTableName()}.{column}: {trouble}");
            }
        }
    }

    [Fact]
    public async Task A_row_that_is_gone_or_of_another_time_is_told()
    {
        await SampleAsync();
        var whole = await File.ReadAllBytesAsync(_folder.Database, _token);
        foreach (var table in Model.GetEntityTypes().Select(static type => type.GetTableName()))
        {
            await File.WriteAllBytesAsync(_folder.Database, whole, _token);
            Outside.Ask(_folder.Database, $"PRAGMA foreign_keys = OFF; DELETE FROM \"{table}\" WHERE rowid = 1");
            Assert.Contains(table == "Totals" ? "the total of the table" : $"the table {table}, where 1 of", await TroubleAsync(), StringComparison.Ordinal);
        }

        // As it was before the last change, with the seal of then: as where the disk did not take a write.
        await File.WriteAllBytesAsync(_folder.Database, whole, _token);
        var before = Outside.Ask(_folder.Database, "SELECT Seal || ',' || Revision || ',' || UsesRevision || ',' || Changed FROM Rigs")!.Split(',');
        using (var store = await _folder.OpenAsync())
        {
            var rig = (await store.Rigs.FindAsync((await store.Rigs.ListAsync(_token))[0].Id, _token))!;
            rig = (await store.Rigs.RemoveAsync(rig.Id, rig.Revision, _token)).Rig!;
        }

        Outside.Ask(_folder.Database, $"UPDATE Rigs SET Removed = NULL, Seal = {before[0]}, Revision = {before[1]}, UsesRevision = {before[2]}, Changed = {before[3]}");
        Assert.Contains("the table Rigs, where there are rows of another time", await TroubleAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_damaged_while_the_program_runs_is_told_where_it_is_read()
    {
        await SampleAsync();
        using var store = await _folder.OpenAsync();
        var rig = (await store.Rigs.ListAsync(_token))[0];
        Outside.Ask(_folder.Database, "UPDATE Edits SET What = 'other'");
        var told = await Assert.ThrowsAsync<StorageException>(() => store.Rigs.FindAsync(rig.Id, _token));
        Assert.Equal("The database of the kept rigs is damaged. Not as it was saved: edit 1 of the rig board (table Edits).", told.Message[..told.Message.IndexOf(" The kept", StringComparison.Ordinal)]);
        Outside.Ask(_folder.Database, "UPDATE Gear SET Label = '9V DC 500mA'");
        told = await Assert.ThrowsAsync<StorageException>(() => store.Gear.NewsAsync(0, _token));
        Assert.Contains("the gear delay-2 (table Gear)", told.Message, StringComparison.Ordinal);
        told = await Assert.ThrowsAsync<StorageException>(() => store.Gear.FindAsync(GearKind.Load, "delay-2", _token));
        Assert.Equal(StoreFault.Damaged, told.Fault);
    }

    [Fact]
    public async Task A_store_of_before_there_were_seals_gets_them()
    {
        Directory.CreateDirectory(_folder.Path);
        using (var connection = Outside.Open(_folder.Database))
            connection.Run(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Data", "20261125230125_Gear.sql"), _token));
        using (await _folder.OpenAsync())
        {
        }

        Assert.Equal("0", Outside.Ask(_folder.Database, "SELECT COUNT(*) FROM Gear WHERE Seal = 0"));
        Assert.Empty(Broken());
        Outside.Ask(_folder.Database, "UPDATE Gear SET Name = 'x' WHERE Tag = 'chain'");
        Assert.Contains("Not as it was saved: the gear chain (table Gear).", await TroubleAsync(), StringComparison.Ordinal);
    }

    private static object Other(Type type) => (Nullable.GetUnderlyingType(type) ?? type) switch
    {
        var one when one == typeof(Guid) => Guid.Parse("01234567-89ab-cdef-0123-456789abcdef"),
        var one when one == typeof(string) => "other",
        var one when one == typeof(byte[]) => (byte[])[1, 2],
        var one when one.IsEnum => Enum.ToObject(one, 1),
        var one => Convert.ChangeType(1, one, CultureInfo.InvariantCulture),
    };

    /// <summary>A row in every table, closed.</summary>
    private async Task SampleAsync()
    {
        using var store = new Store(_folder.Path, TimeProvider.System, static _ => [new(GearKind.Load, "delay-2")]);
        await store.OpenAsync(_token);
        var rig = await store.Rigs.AddAsync("board", "rig: board\n", _token);
        await store.Rigs.SaveAsync(rig.Id, rig.Revision, "board", "rig: board\n# more\n", "a comment", _token);
        var gear = (await store.Gear.AddAsync(new GearContent { Kind = GearKind.Load, Tag = "delay-2", Label = "9V DC 300mA", Text = "x" }, "typed", _token)).Gear!;
        await store.Gear.Readings.AddAsync(gear.Id, new() { Kind = DrawKind.Running, Current = new(0.21m), Taken = DateTimeOffset.UnixEpoch }, _token);
        await store.Gear.Uses.DecideAsync(rig.Id, gear.Id, gear.Revision, takesNew: true, _token);
        var begun = (await store.Acceptances.BeginAsync(rig.Id, new("12ab34cd", "rig: board\n", "by: x\n", "open"), _token))!;
        await store.Acceptances.SaveAsync(begun.Id, begun.Revision, begun.Content, signs: true, _token);
    }

    private List<string> Broken()
    {
        using var file = Outside.Open(_folder.Database);
        return DatabaseSeals.Broken(file);
    }

    private async Task<string?> TroubleAsync()
    {
        using var store = new Store(_folder.Path, TimeProvider.System);
        var opening = await store.OpenAsync(_token);
        Assert.Equal(StoreFault.Damaged, opening.Fault);
        return opening.Trouble;
    }
}
