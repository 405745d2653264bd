using System.Diagnostics;
using System.Text.RegularExpressions;
using Loadmark.Testing;

namespace Loadmark.Bench;

/// <summary>
/// Runs the built test projects that make up rigs, labels and edits with all the rounds they have, of which <c>./test</c> tries a third.
/// </summary>
internal static partial class RoundsBench
{
    private static readonly string[] Projects = ["Core", "Files", "Planning", "Simulation", "Storage"];

    /// <summary>Runs them one after the other and writes the table; 1 where a test fails or a project ran none.</summary>
    public static int Run()
    {
        var table = new ResultTable(
            "All rounds",
            $"The test projects that try what is made up at random or by seeds, run whole with {Rounds.Variable}=all; ./test tries a third of it. {ResultTable.Machine}",
            "project", "passed", "failed", "time");
        var isGood = true;
        foreach (var name in Projects.Select(static project => $"Loadmark.{project}.Tests"))
        {
            var clock = Stopwatch.StartNew();
            var said = Told(name);
            var (passed, failed) = (Count(Passed(), said), Count(Failed(), said));
            isGood &= passed > 0 && failed == 0;
            if (failed != 0 || passed <= 0)
                Console.Error.WriteLine(said);
            table.Add(name, $"{passed}", $"{failed}", $"{clock.Elapsed.TotalSeconds:F0} s");
        }

        table.Write("rounds.md");
        return isGood ? 0 : 1;
    }

    private static string Told(string name)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine("tests", name, "bin", "Release", "net10.0", $"{name}.dll"), "--no-ansi", "--progress", "off"])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
            Environment = { [Rounds.Variable] = "all" },
        };
        using var process = Process.Start(start)!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return text;
    }

    /// <summary>The number that is told; -1 where none is.</summary>
    private static int Count(Regex what, string said) => what.Match(said) is { Success: true } match ? int.Parse(match.Groups["count"].ValueSpan) : -1;

    [GeneratedRegex(@"^\s*succeeded: (?<count>\d+)", RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Passed();

    [GeneratedRegex(@"^\s*failed: (?<count>\d+)", RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Failed();
}
