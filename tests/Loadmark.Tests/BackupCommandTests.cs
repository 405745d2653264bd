using System.Text;
using System.Text.Json;
using Loadmark.Commands;
using Loadmark.Processes;
using Loadmark.Storage;
using Microsoft.Data.Sqlite;

namespace Loadmark.Tests;

/// <summary>Backups and restoring from the command line, over a folder that a page is using.</summary>
public sealed class BackupCommandTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("loadmark-commands-").FullName;
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    private string Data => Path.Combine(_root, "kept");

    private string File => Path.Combine(_root, "monday.db");

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public async Task What_is_kept_goes_to_a_file_and_comes_back_while_the_page_runs()
    {
        using var store = new Store(Data, TimeProvider.System);
        await store.OpenAsync(_token);
        var rig = await store.Rigs.AddAsync("rig", "rig: rig\n", _token);

        var backed = Run("backup", File, "--data", Data);
        Assert.Equal((ExitCode.Fine, ""), (backed.Code, backed.Error));
        Assert.StartsWith("Backed up 1 rig to", backed.Output, StringComparison.Ordinal);
        await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "rig: later\n", "edit", _token);

        var restored = Run("restore", File, "--data", Data, "--json");
        Assert.Equal((ExitCode.Fine, ""), (restored.Code, restored.Error));
        using var answer = JsonDocument.Parse(restored.Output);
        Assert.Equal(["file", "rigs", "gear", "unreadableRigs", "previous", "wasOlder", "wasDamaged"], answer.RootElement.EnumerateObject().Select(static key => key.Name));
        Assert.True(System.IO.File.Exists(answer.RootElement.GetProperty("previous").GetString()));
        Assert.Equal("rig: rig\n", (await store.Rigs.FindAsync(rig.Id, _token))!.Text);
    }

    [Fact]
    public async Task A_file_that_is_there_is_replaced_with_force_only()
    {
        using var store = new Store(Data, TimeProvider.System);
        await store.OpenAsync(_token);
        await System.IO.File.WriteAllTextAsync(File, "a letter", _token);
        var refused = Run("backup", File, "--data", Data, "--json");
        Assert.Equal(ExitCode.Unreadable, refused.Code);
        Assert.Contains("There is a file", refused.Error, StringComparison.Ordinal);
        using (var answer = JsonDocument.Parse(refused.Output))
            Assert.Equal("already-there", answer.RootElement.GetProperty("fault").GetString());

        var forced = Run("backup", File, "--data", Data, "--json", "--force");
        Assert.Equal(ExitCode.Fine, forced.Code);
        using (var answer = JsonDocument.Parse(forced.Output))
            Assert.Equal(["file", "rigs", "gear", "unreadableRigs", "bytes"], answer.RootElement.EnumerateObject().Select(static key => key.Name));
    }

    [Fact]
    public void What_is_no_backup_is_refused()
    {
        var answer = Run("restore", File, "--data", Data);
        Assert.Equal((ExitCode.Unreadable, $"loadmark: There is no file {File}. Nothing was restored.\n", ""), (answer.Code, answer.Error, answer.Output));
        Assert.False(Directory.Exists(Data));
    }

    [Fact]
    public async Task A_damaged_store_is_refused_with_the_commands_that_lead_out_and_each_does()
    {
        Assert.Equal(ExitCode.Fine, Run("gear", "add", "delay-2", "9V DC 300mA", "--data", Data).Code);
        var list = Run("restore", "--data", Data);
        Assert.Equal((ExitCode.Fine, ""), (list.Code, list.Error));
        Assert.StartsWith("1 automatic backup, the last one first.", list.Output, StringComparison.Ordinal);
        await Break("UPDATE Gear SET Revision = 7");

        var refused = Run("gear", "list", "--data", Data);
        Assert.Equal((ExitCode.Unreadable, ""), (refused.Code, refused.Output));
        Assert.StartsWith($"loadmark: {Path.Combine(Data, "loadmark.db")} is damaged. Not as it was saved: the gear delay-2 (table Gear). It was left as it is.", refused.Error, StringComparison.Ordinal);
        string[] ways = [$"loadmark restore --last --data {Data}.", $"loadmark salvage --data {Data}"];
        Assert.All(ways, way => Assert.Contains(way, refused.Error, StringComparison.Ordinal));

        var salvaged = Run("salvage", "--data", Data, "--json");
        Assert.Equal((ExitCode.Fine, ""), (salvaged.Code, salvaged.Error));
        using (var answer = JsonDocument.Parse(salvaged.Output))
        {
            Assert.Equal(["file", "aside", "rigs", "gear", "lost", "fromBackup"], answer.RootElement.EnumerateObject().Select(static key => key.Name));
            Assert.True(System.IO.File.Exists(answer.RootElement.GetProperty("aside").GetString()));
            Assert.Single(answer.RootElement.GetProperty("fromBackup").EnumerateArray());
        }

        Assert.Contains("delay-2", Run("gear", "list", "--data", Data).Output, StringComparison.Ordinal);
        await Break("UPDATE Gear SET Revision = 8");
        var restored = Run("restore", "--last", "--data", Data);
        Assert.Equal((ExitCode.Fine, ""), (restored.Code, restored.Error));
        Assert.Contains("What was there before could not be opened; it is in", restored.Output, StringComparison.Ordinal);
        Assert.Contains("delay-2", Run("gear", "list", "--data", Data).Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Unreadable, Run("salvage", "--data", Data).Code);
    }

    /// <summary>A copy of the day that cannot be made is said, and the command is done all the same.</summary>
    /// <summary>An empty file looks like one that was just begun; only the backups beside it tell that it is a loss.</summary>
    [Fact]
    public async Task A_database_that_is_empty_all_at_once_is_told_with_the_way_back()
    {
        Assert.Equal("", Run("gear", "add", "delay-2", "9V DC 300mA", "--data", Data).Error);
        await System.IO.File.WriteAllBytesAsync(Path.Combine(Data, "loadmark.db"), [], _token);
        foreach (var left in Directory.GetFiles(Data, "loadmark.db-*"))
            System.IO.File.Delete(left);
        var emptied = Run("gear", "list", "--data", Data);
        Assert.Equal(ExitCode.Fine, emptied.Code);
        Assert.StartsWith($"loadmark: {Path.Combine(Data, "loadmark.db")} was empty or gone, and was made anew, though there are backups of it. The backup of ", emptied.Error, StringComparison.Ordinal);
        Assert.EndsWith($"is put in its place by: loadmark restore --last --data {Data}.\n", emptied.Error, StringComparison.Ordinal);
        Assert.Equal((ExitCode.Fine, ""), (Run("restore", "--last", "--data", Data).Code, Run("gear", "list", "--data", Data).Error));
        Assert.Contains("delay-2", Run("gear", "list", "--data", Data).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_there_is_no_room_for_a_copy_the_command_is_done_and_says_so()
    {
        Directory.CreateDirectory(Data);
        await System.IO.File.WriteAllTextAsync(Path.Combine(Data, "backups"), "a file", _token);
        var answer = Run("gear", "add", "delay-2", "9V DC 300mA", "--data", Data);
        Assert.Equal(ExitCode.Fine, answer.Code);
        Assert.StartsWith("loadmark: Today's automatic backup was not made.", answer.Error, StringComparison.Ordinal);
        Assert.Contains("delay-2", Run("gear", "list", "--data", Data).Output, StringComparison.Ordinal);
        Assert.StartsWith("There are no automatic backups yet.", Run("restore", "--data", Data).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("backup needs the name of one file to write to.", "backup")]
    [InlineData("backup needs the name of one file to write to.", "backup", "")]
    [InlineData("restore needs the name of one backup, or --last.", "restore", "a", "b")]
    [InlineData("There is no option --froce. Did you mean --force?", "backup", "a", "--froce")]
    public void A_command_line_that_cannot_be_read_says_why(string complaint, params string[] args)
    {
        var answer = Run(args);
        Assert.Equal(ExitCode.Unreadable, answer.Code);
        Assert.Equal($"loadmark: {complaint}\nSee loadmark {args[0]} --help.\n", answer.Error);
    }

    private async Task Break(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(Data, "loadmark.db")};Pooling=False");
        await connection.OpenAsync(_token);
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(_token);
    }

    private static ProgramRun.Answer Run(params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        var process = new ProcessContext { Output = output, Error = error, Input = static () => Stream.Null };
        var code = LoadmarkCommand.Run(args, process, new Sources.RigFileSource(process, null), static (_, _) => throw new InvalidOperationException("No rig is checked here."));
        return new ProgramRun.Answer(code, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
