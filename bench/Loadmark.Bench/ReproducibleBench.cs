using System.Diagnostics;
using System.Security.Cryptography;

namespace Loadmark.Bench;

/// <summary>
/// Makes a release twice, from two clones at two paths, of which one says that it came from elsewhere, and compares every byte. What is not
/// committed is not in it.
/// </summary>
internal static class ReproducibleBench
{
    /// <summary>The second clone is deeper, so that every path in it has another length.</summary>
    private static readonly string[] Clones = ["one", Path.Combine("second", "a", "deeper", "one")];

    /// <summary>Makes both and writes the table; 1 where a file differs, 2 where a release could not be made.</summary>
    public static int Run()
    {
        var room = Directory.CreateTempSubdirectory("loadmark-reproducible-").FullName;
        try
        {
            var made = new List<SortedDictionary<string, string>>();
            foreach (var clone in Clones)
            {
                var (folder, release) = (Path.Combine(room, clone), Path.Combine(room, $"release {made.Count + 1}"));

                // The second is cloned from the first, so that a commit that is made meanwhile is in neither.
                if (!Do("git", "clone", "--quiet", made.Count == 0 ? "." : Path.Combine(room, Clones[0]), folder)
                    || (made.Count > 0 && !Do("git", "-C", folder, "remote", "set-url", "origin", "https://example.org/elsewhere.git"))
                    || !Do(Path.Combine(folder, "tools", "release.sh"), release))
                    return 2;
                made.Add(DigestsOf(release));
            }

            return Tell(made[0], made[1]);
        }
        finally
        {
            Directory.Delete(room, recursive: true);
        }
    }

    private static int Tell(SortedDictionary<string, string> first, SortedDictionary<string, string> second)
    {
        var differing = first.Keys.Union(second.Keys).Where(file => first.GetValueOrDefault(file) != second.GetValueOrDefault(file)).Order(StringComparer.Ordinal).ToList();
        foreach (var file in differing)
            Console.Error.WriteLine($"differs: {file}");
        var table = new ResultTable(
            "Two releases of one commit",
            "Made by tools/release.sh from two clones at two paths, with two addresses that they say they came from, on one machine with one SDK; every file "
                + $"compared by SHA-256. .NET {Environment.Version}.",
            "release", "files", "that differ");
        table.Add("from the first clone", $"{first.Count}", "");
        table.Add("from the second", $"{second.Count}", $"{differing.Count}");
        table.Write("reproducible.md");
        return differing.Count == 0 && first.Count > 0 ? 0 : 1;
    }

    private static SortedDictionary<string, string> DigestsOf(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            file => Path.GetRelativePath(folder, file), static file => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))),
        StringComparer.Ordinal);

    private static bool Do(string program, params string[] args)
    {
        using var process = Process.Start(new ProcessStartInfo(program, args) { UseShellExecute = false })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
