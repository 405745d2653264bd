using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Loadmark.Tests;

/// <summary>Closed, full and missing streams, pipes and folders: the program does what <c>docs/surroundings.md</c> says, line by line.</summary>
public sealed partial class SurroundingsTests : IDisposable
{
    /// <summary>
    /// Types one line, with the program as a function that leaves its exit code in a file, whatever stands around it in the line. Who is
    /// everything's owner is held to the rights of files as anybody else is.
    /// </summary>
    private const string Shell = """
        loadmark() { "$DOTNET" "$PROGRAM" "$@"; echo $? >"$CODE"; }
        eval "$TYPED"
        wait
        """;

    /// <summary>A start costs a fifth of a second of one processor; the waits of some lines are passed with the others.</summary>
    private const int AtOnce = 4;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-surroundings-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Every_line_of_the_tables_says_and_ends_as_they_tell()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the lines are typed in a shell, with what Linux has");
        Assert.True(SurroundingsRow.All.Count > 40);
        var wrong = new ConcurrentBag<string>();
        var options = new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = TestContext.Current.CancellationToken };
        await Parallel.ForEachAsync(SurroundingsRow.All.Index(), options, async (one, stop) =>
        {
            if (await DifferenceAsync(one.Index, one.Item, stop) is { } difference)
                wrong.Add(difference);
        });
        Assert.True(wrong.IsEmpty, string.Join("\n\n", wrong));
    }

    private async Task<string?> DifferenceAsync(int number, SurroundingsRow row, CancellationToken stop)
    {
        var (home, folder, code) = (In($"{number}"), In(Path.Combine($"{number}", "here")), In($"{number}.code"));
        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(Path.Combine(folder, "board.rig.yaml"), SmallBoard.Planned, stop);
        using var shell = Process.Start(StartOf(row, home, folder, code))!;
        shell.StandardInput.Close();
        using var late = CancellationTokenSource.CreateLinkedTokenSource(stop);
        late.CancelAfter(Patience);
        try
        {
            var said = shell.StandardError.ReadToEndAsync(late.Token);
            await shell.StandardOutput.ReadToEndAsync(late.Token);
            await shell.WaitForExitAsync(late.Token);
            var says = string.Join(' ', WaitNotice().Replace(await said, "").Split('\n', StringSplitOptions.RemoveEmptyEntries));
            var expected = row.Says.Replace("FOLDER", folder, StringComparison.Ordinal);
            var ended = File.Exists(code) ? (await File.ReadAllTextAsync(code, stop)).Trim() : "not at all";
            return says == expected && ended == $"{row.Code}" ? null : $"{row.Typed}\n  ended with {ended} and said {says}\n  not with {row.Code} and {expected}";
        }
        catch (OperationCanceledException) when (!stop.IsCancellationRequested)
        {
            shell.Kill(entireProcessTree: true);
            return $"{row.Typed}\n  hangs";
        }
    }

    private static ProcessStartInfo StartOf(SurroundingsRow row, string home, string folder, string code)
    {
        string[] line = Environment.IsPrivilegedProcess
            ? ["setpriv", "--bounding-set", "-dac_override,-dac_read_search", "sh", "-c", Shell]
            : ["sh", "-c", Shell];
        var start = new ProcessStartInfo(line[0], line[1..])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["DOTNET"] = Environment.ProcessPath is { } own && Path.GetFileNameWithoutExtension(own) == "dotnet" ? own : "dotnet";
        start.Environment["PROGRAM"] = Path.Combine(AppContext.BaseDirectory, "loadmark.dll");
        (start.Environment["TYPED"], start.Environment["CODE"]) = (row.Typed, code);
        (start.Environment["HOME"], start.Environment["LC_ALL"]) = (home, "C.UTF-8");
        foreach (var unset in (string[])["XDG_DATA_HOME", "LOADMARK_DATA", "LOADMARK_WAIT", "LOADMARK_DEBUG", "TMPDIR"])
            start.Environment.Remove(unset);
        return start;
    }

    private string In(string name) => Path.Combine(_folder, name);

    [GeneratedRegex("(?m)^[0-9]+ s: waiting .*\\n", RegexOptions.None, 1000)]
    private static partial Regex WaitNotice();
}
