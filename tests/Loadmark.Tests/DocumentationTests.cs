using System.Text.RegularExpressions;
using Loadmark.Files;
using Loadmark.Files.PriceLists;

namespace Loadmark.Tests;

/// <summary>What the documentation points to is there, and what it shows is what the program does.</summary>
public sealed partial class DocumentationTests
{
    private static readonly string[] Pages =
    [
        .. Directory.EnumerateFiles(Repository.Root, "*.md"),
        .. Directory.EnumerateFiles(Repository.PathOf("docs"), "*.md", SearchOption.AllDirectories),
        .. Directory.EnumerateFiles(Repository.PathOf("bench", "results"), "*.md"),
    ];

    private static readonly string[] TopFolders = ["src/", "tests/", "docs/", "bench/", "schema/", "examples/"];

    [Fact]
    public void Every_link_leads_somewhere()
    {
        var broken = new List<string>();
        foreach (var page in Pages)
        {
            foreach (Match link in Link().Matches(File.ReadAllText(page)))
            {
                var target = link.Groups["text"].Value;
                if (target.Contains("://", StringComparison.Ordinal) || target.StartsWith("mailto:", StringComparison.Ordinal))
                    continue;
                var parts = target.Split('#');
                var path = parts[0].Length == 0 ? page : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(page)!, parts[0]));
                if (!Path.Exists(path))
                    broken.Add($"{NameOf(page)} links to {target}");
                else if (parts.Length > 1 && !Anchors(path).Contains(parts[1]))
                    broken.Add($"{NameOf(page)} links to {target}, which has no such heading");
            }
        }

        Assert.True(broken.Count == 0, string.Join('\n', broken));
    }

    /// <summary>Paths of the repository in code type exist: so a page that was not changed with the code is seen.</summary>
    [Fact]
    public void Every_path_that_is_named_is_there()
    {
        var missing = new List<string>();
        foreach (var page in Pages.Where(static page => !NameOf(page).StartsWith("bench/", StringComparison.Ordinal)))
        {
            foreach (Match code in Code().Matches(File.ReadAllText(page)))
            {
                var path = code.Groups["text"].Value;
                if (TopFolders.Any(folder => path.StartsWith(folder, StringComparison.Ordinal)) && path.IndexOfAny([' ', '*', '…', '{', '<']) < 0 && !Path.Exists(Repository.PathOf(path)))
                    missing.Add($"{NameOf(page)} names {path}");
            }
        }

        Assert.True(missing.Count == 0, string.Join('\n', missing));
    }

    [Fact]
    public void Every_word_of_the_planner_that_is_explained_is_a_type()
    {
        var text = File.ReadAllText(Repository.PathOf("ARCHITECTURE.md"));
        var names = text[text.IndexOf("## The planner's words", StringComparison.Ordinal)..text.IndexOf("## Units", StringComparison.Ordinal)]
            .Split('\n').Where(static line => line.StartsWith("| `", StringComparison.Ordinal)).SelectMany(static line => Code().Matches(line.Split('|')[1]).Select(static match => match.Groups["text"].Value)).ToList();
        Assert.True(names.Count > 20);
        var files = Directory.EnumerateFiles(Repository.PathOf("src", "Loadmark.Planning"), "*.cs", SearchOption.AllDirectories).Select(Path.GetFileNameWithoutExtension).ToHashSet(StringComparer.Ordinal);
        Assert.DoesNotContain(names, name => !files.Contains(name));
    }

    /// <summary>The commands of docs/gear.md, as they are typed there, one after the other on an empty library.</summary>
    [Fact]
    public void The_commands_of_the_gear_page_run()
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-docs-");
        try
        {
            var lines = Blocks("docs/gear.md", "sh").SelectMany(static block => block.Split('\n', StringSplitOptions.RemoveEmptyEntries)).ToList();
            Assert.True(lines.Count >= 5);
            foreach (var line in lines)
            {
                var words = Word().Matches(line.Split(" #")[0]).Select(static match => match.Value.Trim('"')).ToList();
                Assert.Equal("loadmark", words[0]);
                var args = words.Skip(1).Select(static word => word.StartsWith("examples/", StringComparison.Ordinal) ? Repository.PathOf(word) : word).ToArray();
                var (code, output, error) = LibraryRun.In(folder.FullName, TimeProvider.System, args);
                Assert.True(code == 0, $"{line}\n{output}{error}");
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void The_price_lists_that_are_shown_can_be_read()
    {
        var readings = Blocks("docs/price-list.md", "csv").Select(static block => PriceListReader.Read(block, "shown.csv")).ToList();
        Assert.All(readings, static reading => Assert.Empty(reading.Errors));
        Assert.Equal([2, 4], readings.Select(static reading => reading.Offers?.Count ?? 0));
    }

    [Fact]
    public void The_rig_that_the_design_shows_can_be_read()
    {
        var reading = RigFileReader.Read(Blocks("docs/design.md", "yaml").First(), "shown.rig.yaml");
        Assert.Empty(reading.Errors.Select(static error => error.ToString()));
        Assert.Equal(6, reading.Rig!.Loads.Count);
    }

    private static IEnumerable<string> Blocks(string page, string kind) =>
        Block().Matches(File.ReadAllText(Repository.PathOf(page))).Where(match => match.Groups["kind"].Value == kind).Select(static match => match.Groups["text"].Value);

    /// <summary>The anchors of a page's headings, as repositories on the web make them.</summary>
    private static HashSet<string> Anchors(string page) =>
        [.. File.ReadLines(page).Where(static line => line.StartsWith('#')).Select(static line => NoWord().Replace(line.TrimStart('#').Trim().ToLowerInvariant(), "").Replace(' ', '-'))];

    private static string NameOf(string page) => Path.GetRelativePath(Repository.Root, page).Replace('\\', '/');

    [GeneratedRegex(@"\]\((?<text>[^)\s]+)\)", RegexOptions.None, 1000)]
    private static partial Regex Link();

    [GeneratedRegex(@"`(?<text>[^`\n]+)`", RegexOptions.None, 1000)]
    private static partial Regex Code();

    [GeneratedRegex(@"^```(?<kind>\w+)\n(?<text>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline, 1000)]
    private static partial Regex Block();

    [GeneratedRegex("\"[^\"]*\"|\\S+", RegexOptions.None, 1000)]
    private static partial Regex Word();

    [GeneratedRegex(@"[^\w\- ]", RegexOptions.None, 1000)]
    private static partial Regex NoWord();
}
