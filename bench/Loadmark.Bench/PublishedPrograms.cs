using System.Diagnostics;

namespace Loadmark.Bench;

/// <summary>The program and an empty one, both published the same way, and run in turn so that a drift of the machine hits all alike.</summary>
internal sealed class PublishedPrograms
{
    private static readonly string Folder = Path.Combine("artifacts", "bench");

    private PublishedPrograms(string loadmark, string empty) => (Loadmark, Empty) = (loadmark, empty);

    /// <summary>The path of loadmark.</summary>
    public string Loadmark { get; }

    /// <summary>The path of a program that does nothing.</summary>
    public string Empty { get; }

    /// <summary>Publishes both.</summary>
    public static PublishedPrograms Publish()
    {
        Publish("src/Loadmark", Path.Combine(Folder, "loadmark"));
        Publish("bench/Empty", Path.Combine(Folder, "empty"));
        return new PublishedPrograms(Path.Combine(Folder, "loadmark", "loadmark"), Path.Combine(Folder, "empty", "Empty"));
    }

    /// <summary>The times of whole processes, ms: of each case one a run.</summary>
    /// <param name="runs">How many runs count; two before them warm up.</param>
    /// <param name="cases">The program of each case and what it is given.</param>
    public static List<double>[] InTurn(int runs, IReadOnlyList<(string Program, string[] Arguments)> cases)
    {
        var times = cases.Select(static _ => new List<double>()).ToArray();
        for (var run = -2; run < runs; run++)
        {
            for (var index = 0; index < cases.Count; index++)
            {
                var milliseconds = Time(cases[index].Program, cases[index].Arguments);
                if (run >= 0)
                    times[index].Add(milliseconds);
            }
        }

        return times;
    }

    /// <summary>The time of one process, ms; it has to answer.</summary>
    public static double Time(string program, string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        process.ErrorDataReceived += static (_, _) => { };
        process.BeginErrorReadLine();
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var elapsed = clock.Elapsed.TotalMilliseconds;
        if (process.ExitCode is not (0 or 1))
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments.Take(3))} ended with {process.ExitCode}.");
        return elapsed;
    }

    /// <summary>The middle of several values, at least one.</summary>
    public static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static void Publish(string project, string folder)
    {
        string[] arguments = ["publish", project, "-c", "Release", "-r", "linux-x64", "--self-contained", "false", "-o", folder, "-v", "quiet"];
        using var process = Process.Start("dotnet", arguments);
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"Publishing {project} failed.");
    }
}
