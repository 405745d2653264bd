using System.Diagnostics;
using System.Globalization;
using Loadmark.Storage;
using Microsoft.Data.Sqlite;

namespace Loadmark.Bench;

/// <summary>Kills a program that saves edits (SIGKILL) at random moments, and looks each time at what it left.</summary>
internal static class KillsBench
{
    /// <summary>A save takes a few milliseconds; the moment of the kill lies anywhere in some tens of them.</summary>
    private const int LatestMilliseconds = 60;

    /// <summary>The table is written after so many, so that a run that is ended early says what it saw.</summary>
    private const int Written = 25;

    public static int Run(int kills)
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-kills-").FullName;
        try
        {
            return RunAsync(folder, kills).GetAwaiter().GetResult();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The program that is killed: says each edit's number once it is kept, and never ends.</summary>
    public static async Task<int> SaveForeverAsync(string folder, Guid id)
    {
        using var store = new Store(folder, TimeProvider.System);
        await store.OpenAsync();
        var rig = (await store.Rigs.FindAsync(id))!;
        for (var edit = int.Parse(rig.Name, CultureInfo.InvariantCulture); ; edit++)
        {
            Console.WriteLine(edit.ToString(CultureInfo.InvariantCulture));
            await Console.Out.FlushAsync();
            rig = (await store.Rigs.SaveAsync(id, rig.Revision, $"{edit + 1}", TextAfter(edit + 1), "edit")).Rig!;
        }
    }

    private static async Task<int> RunAsync(string folder, int kills)
    {
        var chance = new Random(20261125);
        Guid id;
        using (var store = new Store(folder, TimeProvider.System))
        {
            await store.OpenAsync();
            id = (await store.Rigs.AddAsync("0", TextAfter(0))).Id;
        }

        var (atWork, unopened, damaged, lost, half, unsaid) = (0, 0, 0, 0, 0, 0);
        var edits = 0;
        for (var kill = 0; kill < kills; kill++)
        {
            var (first, last) = await KillAsync(folder, id, chance.Next(0, LatestMilliseconds));
            atWork += last > first + 1 ? 1 : 0;
            damaged += IsWhole(folder) ? 0 : 1;
            using var store = new Store(folder, TimeProvider.System);
            if ((await store.OpenAsync()).Fault is not null)
            {
                unopened++;
                continue;
            }

            var rig = (await store.Rigs.FindAsync(id))!;
            edits = int.Parse(rig.Name, CultureInfo.InvariantCulture);
            lost += edits < last ? 1 : 0;
            half += rig.Text != TextAfter(edits) || rig.Revision != edits + 1 || edits > last + 1 ? 1 : 0;
            unsaid += edits == last + 1 ? 1 : 0;
            if ((kill + 1) % Written == 0)
                Write(kill + 1);
        }

        Write(kills);
        return unopened + damaged + lost + half == 0 ? 0 : 1;

        void Write(int done)
        {
            var table = new ResultTable(
                "Killed while saving",
                $"A program that saves edit after edit of a rig of about 10 kB is ended by SIGKILL at a random moment ({LatestMilliseconds} ms), again and again on one database. {ResultTable.Machine}",
                "what", "times");
            table.Add("killed", $"{done}");
            table.Add("of these while it was saving, two edits or more after it had begun", $"{atWork}");
            table.Add("edits kept in all", $"{edits}");
            table.Add("the database did not open afterwards", $"{unopened}");
            table.Add("SQLite's own integrity_check found a fault", $"{damaged}");
            table.Add("an edit that was confirmed was not there", $"{lost}");
            table.Add("an edit was half there, or text and history did not agree", $"{half}");
            table.Add("an edit was there whole that had not been confirmed yet", $"{unsaid}");
            table.Write("kills.md");
        }
    }

    private static async Task<(int First, int Last)> KillAsync(string folder, Guid id, int afterMilliseconds)
    {
        using var child = Process.Start(new ProcessStartInfo("dotnet", [typeof(KillsBench).Assembly.Location, "kills-child", folder, $"{id}"]) { RedirectStandardOutput = true, UseShellExecute = false })!;
        var first = int.Parse((await child.StandardOutput.ReadLineAsync())!, CultureInfo.InvariantCulture);
        await child.StandardOutput.ReadLineAsync();
        await Task.Delay(afterMilliseconds);
        child.Kill();
        var rest = await child.StandardOutput.ReadToEndAsync();
        await child.WaitForExitAsync();

        // The last line may be cut short.
        var lines = rest[..(rest.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return (first, lines.Length == 0 ? first + 1 : int.Parse(lines[^1], CultureInfo.InvariantCulture));
    }

    /// <summary>What SQLite alone says, over a plain connection.</summary>
    private static bool IsWhole(string folder)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "loadmark.db"), Pooling = false }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        return command.ExecuteScalar() is "ok";
    }

    private static string TextAfter(int edits) =>
        $"rig: {edits}\n" + string.Concat(Enumerable.Range(0, 400).Select(line => $"# {unchecked(((line * 7919) + edits) * 48271)} {line}\n"));
}
