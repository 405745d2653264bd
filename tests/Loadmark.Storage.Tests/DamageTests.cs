using System.Text;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Tests.Children;

namespace Loadmark.Storage.Tests;

/// <summary>Files that are not what they should be: said, and left as they are.</summary>
public sealed class DamageTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("# Shopping list\n\n- strings\n")]
    [InlineData("x")]
    public async Task A_file_of_another_kind(string content)
    {
        Directory.CreateDirectory(_folder.Path);
        content = content.PadRight(5000);
        await File.WriteAllTextAsync(_folder.Database, content, _token);
        await AssertFaultAsync(StoreFault.NotADatabase, Encoding.UTF8.GetBytes(content));
    }

    [Fact]
    public async Task A_database_of_another_program()
    {
        Directory.CreateDirectory(_folder.Path);
        using (var other = Outside.Open(_folder.Database))
        using (var command = other.CreateCommand())
        {
            command.CommandText = "CREATE TABLE Recipes (Name TEXT); INSERT INTO Recipes VALUES ('soup')";
            command.ExecuteNonQuery();
        }

        await AssertFaultAsync(StoreFault.NotADatabase, await File.ReadAllBytesAsync(_folder.Database, _token));
    }

    /// <summary>SQLite's own check finds nothing wrong with a column of another name.</summary>
    [Fact]
    public async Task A_table_whose_description_is_damaged()
    {
        await SampleAsync();
        using (var other = Outside.Open(_folder.Database))
        using (var command = other.CreateCommand())
        {
            command.CommandText = "PRAGMA writable_schema = ON; UPDATE sqlite_master SET sql = replace(sql, '\"Label\"', '\"Lobel\"') WHERE name = 'Gear'; PRAGMA wal_checkpoint(TRUNCATE)";
            command.ExecuteNonQuery();
        }

        await AssertFaultAsync(StoreFault.Damaged, await File.ReadAllBytesAsync(_folder.Database, _token));
    }

    /// <summary>Both were found by fuzzing backups: the list of migrations under another name, and a row of it without one.</summary>
    [Theory]
    [InlineData("UPDATE sqlite_master SET sql = replace(sql, 'MigrationId', 'MigratiunId') WHERE name = '__EFMigrationsHistory'")]
    [InlineData("UPDATE sqlite_master SET sql = replace(sql, '\"MigrationId\" TEXT NOT NULL', '\"MigrationId\" TEXT') WHERE name = '__EFMigrationsHistory'", "INSERT INTO __EFMigrationsHistory VALUES (NULL, '10')")]
    public async Task A_list_of_migrations_that_is_damaged(params string[] damages)
    {
        await SampleAsync();
        foreach (var damage in damages)
        {
            using var other = Outside.Open(_folder.Database);
            using var command = other.CreateCommand();
            command.CommandText = $"PRAGMA writable_schema = ON; {damage}; PRAGMA wal_checkpoint(TRUNCATE)";
            command.ExecuteNonQuery();
        }

        var bytes = await File.ReadAllBytesAsync(_folder.Database, _token);
        await AssertFaultAsync(StoreFault.Damaged, bytes);

        // The same as a backup that somebody would restore.
        using var elsewhere = new TemporaryFolder();
        Directory.CreateDirectory(elsewhere.Path);
        var backup = Path.Combine(elsewhere.Path, "backup.db");
        await File.WriteAllBytesAsync(backup, bytes, _token);
        using var store = new Store(Path.Combine(elsewhere.Path, "store"), TimeProvider.System);
        await store.OpenAsync(_token);
        var fault = await Assert.ThrowsAsync<StorageException>(() => store.Copies.RestoreAsync(backup, cancellationToken: _token));
        Assert.Equal(StoreFault.Damaged, fault.Fault);
    }

    [Fact]
    public async Task An_empty_file_becomes_a_database()
    {
        Directory.CreateDirectory(_folder.Path);
        await File.WriteAllBytesAsync(_folder.Database, [], _token);
        using var store = new Store(_folder.Path, TimeProvider.System);
        Assert.Equal(new StoreOpening { WasCreated = true }, await store.OpenAsync(_token));
    }

    [Fact]
    public async Task A_database_that_ends_too_early()
    {
        var bytes = await SampleAsync();
        foreach (var length in new[] { bytes.Length - 4096, bytes.Length / 2, 4096 + 100, 600 })
        {
            await File.WriteAllBytesAsync(_folder.Database, bytes[..length], _token);
            await AssertFaultAsync(StoreFault.Damaged, bytes[..length]);
        }
    }

    [Fact]
    public async Task A_page_that_was_overwritten()
    {
        var bytes = await SampleAsync();
        for (var page = 1; page < bytes.Length / 4096; page++)
        {
            // The first bytes of a page say what it is and where its rows are. Pages that only carry on a long text have none.
            if (bytes[page * 4096] is not (2 or 5 or 10 or 13))
                continue;
            var damaged = bytes.ToArray();
            damaged.AsSpan(page * 4096, 64).Fill(0xA5);
            await File.WriteAllBytesAsync(_folder.Database, damaged, _token);
            await AssertFaultAsync(StoreFault.Damaged, damaged);
        }
    }

    [Fact]
    public async Task A_text_that_was_overwritten_is_told_when_it_is_read()
    {
        using var store = await _folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", Child.TextAfter(1), _token);
        Outside.Ask(_folder.Database, "UPDATE Rigs SET Text = x'017777'");
        var fault = await Assert.ThrowsAsync<StorageException>(() => store.Rigs.FindAsync(rig.Id, _token));
        Assert.Equal(StoreFault.Damaged, fault.Fault);
        Assert.Contains("Not as it was saved: the rig rig (table Rigs).", fault.Message, StringComparison.Ordinal);
        Assert.Single(await store.Rigs.ListAsync(_token));
    }

    private async Task<byte[]> SampleAsync()
    {
        using (var store = await _folder.OpenAsync())
        {
            for (var number = 0; number < 20; number++)
            {
                var rig = await store.Rigs.AddAsync($"rig {number}", Child.TextAfter(number), _token);
                for (var edit = 0; edit < 5; edit++)
                    rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, $"rig {edit}", $"{edit}\n{Child.TextAfter(number)}", "edit", _token)).Rig!;
            }
        }

        return await File.ReadAllBytesAsync(_folder.Database, _token);
    }

    private async Task AssertFaultAsync(StoreFault fault, byte[] content)
    {
        using (var store = new Store(_folder.Path, TimeProvider.System))
        {
            var opening = await store.OpenAsync(_token);
            Assert.Equal(fault, opening.Fault);
            Assert.StartsWith($"{_folder.Database} is ", opening.Trouble, StringComparison.Ordinal);
            var later = await Assert.ThrowsAsync<StorageException>(() => store.Rigs.AddAsync("rig", "", _token));
            Assert.Equal(fault, later.Fault);
        }

        Assert.Equal(content, await File.ReadAllBytesAsync(_folder.Database, _token));
    }
}
