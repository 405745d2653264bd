using System.Diagnostics;
using System.Text;
using Loadmark.Storage;
using Microsoft.Data.Sqlite;

namespace Loadmark.Bench;

/// <summary>Times keeping rigs on this machine's disk, beside SQLite alone doing the least that is as safe.</summary>
internal static class StorageBench
{
    private const int Saves = 1000;
    private const int Rigs = 1000;

    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-bench-").FullName;
        try
        {
            RunAsync(folder).GetAwaiter().GetResult();
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task RunAsync(string folder)
    {
        var table = new ResultTable(
            "Keeping rigs",
            $"Release, one task, on the disk of the temporary folder. A save is over when the disk has it. {ResultTable.Machine}",
            "what", "times", "median", "95th percentile", "longest");
        var text = RigOf(4096);

        using (var store = new Store(Path.Combine(folder, "one"), TimeProvider.System))
        {
            Add(table, "make a new database, first use of the library in the process", [await TimeAsync(() => store.OpenAsync())]);
            var rig = await store.Rigs.AddAsync("rig", text);
            Add(table, "save an edit of one line in a rig of 4 kB", await RepeatAsync(Saves, async number =>
                rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", Edited(text, number), "edit")).Rig!));
            Add(table, "the same, with 1,000 edits kept", await RepeatAsync(Saves, async number =>
                rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", Edited(text, number + Saves), "edit")).Rig!));
            Add(table, "undo", await RepeatAsync(500, async _ => rig = (await store.Rigs.UndoAsync(rig.Id, rig.Revision)).Rig!));
            Add(table, "find", await RepeatAsync(Saves, async _ => await store.Rigs.FindAsync(rig.Id)));
        }

        Add(table, "reference: SQLite alone writes 4 kB in one statement", await PlainAsync(Path.Combine(folder, "plain.db"), text));
        var perEdit = new FileInfo(Path.Combine(folder, "one", "loadmark.db")).Length / RigStore.EditsKept;

        using (var store = new Store(Path.Combine(folder, "one-big"), TimeProvider.System))
        {
            await store.OpenAsync();
            var big = RigOf(RigStore.LongestText - 100);
            var rig = await store.Rigs.AddAsync("rig", big);
            Add(table, "save an edit of one line in a rig of 1 MiB", await RepeatAsync(100, async number =>
                rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", Edited(big, number), "edit")).Rig!));
        }

        await ManyAsync(table, Path.Combine(folder, "many"), text);
        table.Add("size of a database of one rig of 4 kB with 1,000 edits, per edit", "", $"{perEdit} bytes", "", "");
        table.Write("storage.md");
    }

    private static async Task ManyAsync(ResultTable table, string folder, string text)
    {
        using (var store = new Store(folder, TimeProvider.System))
        {
            await store.OpenAsync();
            for (var number = 0; number < Rigs; number++)
            {
                var rig = await store.Rigs.AddAsync($"rig {number}", Edited(text, number));
                for (var edit = 0; edit < 10; edit++)
                    rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, rig.Name, Edited(text, number + edit + 1), "edit")).Rig!;
            }
        }

        Add(table, $"open a store of {Rigs} rigs of 4 kB with 10 edits each", await RepeatAsync(20, async _ =>
        {
            using var store = new Store(folder, TimeProvider.System);
            await store.OpenAsync();
        }));
        using (var store = new Store(folder, TimeProvider.System))
        {
            await store.OpenAsync();
            Add(table, $"list {Rigs} rigs", await RepeatAsync(100, async _ => await store.Rigs.ListAsync()));
        }
    }

    private static async Task<List<double>> PlainAsync(string path, string text)
    {
        using var connection = new SqliteConnection($"Data Source={path}");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE Texts (Id INTEGER PRIMARY KEY, Text TEXT); INSERT INTO Texts VALUES (1, '')";
        command.ExecuteNonQuery();
        command.CommandText = "UPDATE Texts SET Text = $text WHERE Id = 1";
        var value = command.Parameters.Add("$text", SqliteType.Text);
        return await RepeatAsync(Saves, number =>
        {
            value.Value = Edited(text, number);
            return command.ExecuteNonQueryAsync();
        });
    }

    private static string RigOf(int bytes)
    {
        var text = new StringBuilder("rig: Pit board, bass chair\nmains: 230 V 50 Hz\n\nloads:\n");
        for (var load = 1; text.Length < bytes; load++)
            text.Append($"  PD-{load:0000}: {{ kind: {(load % 3 == 0 ? "digital" : "analog drive")}, label: \"9V DC {(load * 37 % 490) + 10}mA centre negative\" }}   # asset {load * 7919 % 10007}\n");
        return text.ToString(0, bytes);
    }

    /// <summary>One line in the middle differs.</summary>
    private static string Edited(string text, int number)
    {
        var line = text.IndexOf('\n', text.Length / 2);
        return $"{text.AsSpan(0, line)} changed {number}{text.AsSpan(line)}";
    }

    private static async Task<List<double>> RepeatAsync(int times, Func<int, Task> action)
    {
        var seconds = new List<double>();
        for (var time = -Math.Min(20, times / 5); time < times; time++)
        {
            var took = await TimeAsync(() => action(time));
            if (time >= 0)
                seconds.Add(took);
        }

        return seconds;
    }

    private static async Task<double> TimeAsync(Func<Task> action)
    {
        var clock = Stopwatch.StartNew();
        await action();
        return clock.Elapsed.TotalSeconds;
    }

    private static void Add(ResultTable table, string what, List<double> seconds)
    {
        seconds.Sort();
        table.Add(what, $"{seconds.Count}", At(0.5), At(0.95), At(1));

        string At(double share) => $"{seconds[(int)(share * (seconds.Count - 1))] * 1e3:F2} ms";
    }
}
