using System.Reflection;
using System.Text.RegularExpressions;
using Loadmark.Core.Checks;
using Loadmark.Tests.House;

namespace Loadmark.Bench;

/// <summary>
/// Measures the house, the source itself: its size, folders that need each other in a circle, long files and lines, what stands in two
/// places.
/// </summary>
internal static partial class HouseBench
{
    private const int LongFile = 300;

    /// <summary>The compiled projects.</summary>
    private static readonly Assembly[] Projects =
    [
        typeof(RuleBook).Assembly, typeof(Files.RigFile).Assembly, typeof(Circuits.Networks.Netlist).Assembly,
        typeof(Simulation.RigSimulator).Assembly, typeof(Planning.RigPlanner).Assembly, typeof(Drawing.Scenes.Scene).Assembly,
        typeof(Storage.Store).Assembly, typeof(Web.Routes).Assembly, typeof(Commands.LoadmarkCommand).Assembly,
    ];

    /// <summary>
    /// What was counted before, by the name of the measure: by a reading of the tree at commit 445144f, where it counted the same, and by
    /// this bench at commit 8bae58f, before folders were put in order.
    /// </summary>
    private static readonly Dictionary<string, (string Read, string Before)> Earlier = new(StringComparer.Ordinal)
    {
        ["Source lines, without migrations"] = ("58,609", "65,572"),
        ["Lines of migrations"] = ("1,109", "1,109"),
        ["Source files, without migrations"] = ("1,007", "1,083"),
        ["Namespaces in cycles, Loadmark.Core"] = ("4 of 13", "4 of 14"),
        ["Namespaces in cycles, Loadmark.Files"] = ("6 of 13", "6 of 13"),
        ["Namespaces in cycles, Loadmark.Circuits"] = ("3 of 5", "3 of 5"),
        ["Namespaces in cycles, Loadmark.Simulation"] = ("4 of 7", "5 of 7"),
        ["Namespaces in cycles, Loadmark.Planning"] = ("6 of 9", "7 of 9"),
        ["Namespaces in cycles, Loadmark.Drawing"] = ("2 of 5", "2 of 5"),
        ["Namespaces in cycles, Loadmark.Storage"] = ("5 of 7", "5 of 7"),
        ["Namespaces in cycles, Loadmark.Web"] = ("2 of 11", "2 of 10"),
        ["Namespaces in cycles, Loadmark"] = ("13 of 15", "14 of 15"),
        ["Files over 300 lines"] = ("5", "6"),
        ["Lines over 140 columns"] = ("about 1,400", "1,708"),
        ["Names of rules as strings outside their rule"] = ("14", "0"),
        ["File names that are not unique"] = ("13", "14"),
        ["JSON keys written twice"] = ("147", "171"),
    };

    /// <summary>Counts, prints the table and writes it; the cycles are printed with the reasons for each arrow.</summary>
    public static int Run()
    {
        var files = SourceTree.Read(".");
        var own = files.Where(static file => !file.IsMigration).ToList();
        var graphs = Projects.Select(project => NamespaceGraph.Of(project, own)).ToList();
        var table = new ResultTable(
            "The house",
            "The source text below src and the compiled projects, counted. A namespace needs another where one of its types refers to a "
            + "type there, or one of its files has a using line for it. At 445144f the tree was read by hand and by scripts over the text, "
            + "so that some figures differ by the way of counting.",
            "measure", "at 445144f", "at 8bae58f", "now");
        Add(table, "Source lines, without migrations", $"{own.Sum(static file => file.Lines.Count):N0}");
        Add(table, "Lines of migrations", $"{files.Except(own).Sum(static file => file.Lines.Count):N0}");
        Add(table, "Source files, without migrations", $"{own.Count:N0}");
        foreach (var graph in graphs)
            Add(table, $"Namespaces in cycles, {graph.Project}", $"{graph.Cycles().Sum(static set => set.Count)} of {graph.Count}");
        Add(table, $"Files over {LongFile} lines", $"{own.Count(static file => file.Lines.Count > LongFile)}");
        Add(table, "Lines over 140 columns", $"{own.Sum(static file => file.WideLines.Count()):N0}");
        Add(table, "Names of rules as strings outside their rule", $"{own.Sum(RuleNames)}");
        Add(table, "File names that are not unique", $"{SourceTree.Namesakes(files).Count}");
        Add(table, "JSON keys written twice", $"{KeysWrittenTwice(own)}");
        table.Write("house.md");
        foreach (var graph in graphs)
        {
            foreach (var cycle in graph.Cycles())
                Console.Write($"\n{string.Join(", ", cycle)}\n  {string.Join("\n  ", graph.Arrows(cycle))}\n");
        }

        foreach (var names in SourceTree.Namesakes(files))
            Console.WriteLine(string.Join(", ", names.Select(static file => file.Path)));
        return 0;
    }

    private static void Add(ResultTable table, string measure, string now)
    {
        var (read, before) = Earlier.GetValueOrDefault(measure, ("-", "-"));
        table.Add(measure, read, before, now);
    }

    /// <summary>
    /// How often a file names a rule in a string. Names of one word (unfed, sags, unregulated) are words of the language too and are passed
    /// over.
    /// </summary>
    private static int RuleNames(SourceFile file)
    {
        var rules = RuleBook.Rules.Select(static rule => rule.Id.Name).Where(static name => name.Contains('-', StringComparison.Ordinal));
        return file.Name == "RuleId.cs" ? 0 : rules.Sum(rule => file.Lines.Count(line => line.Contains($"\"{rule}\"", StringComparison.Ordinal)));
    }

    /// <summary>Names of members that the writers of answers have and the description of the answers has again.</summary>
    private static int KeysWrittenTwice(IReadOnlyList<SourceFile> files)
    {
        var description = files.Where(static file => file.Path.StartsWith("Loadmark/Api/Description/", StringComparison.Ordinal)).ToList();
        var writers = files.Where(static file => file.Project == "Loadmark").Except(description);
        return Keys(writers, WrittenKey()).Intersect(Keys(description, DescribedKey()), StringComparer.Ordinal).Count();
    }

    private static HashSet<string> Keys(IEnumerable<SourceFile> files, Regex form) =>
        [.. files.SelectMany(static file => file.Lines).SelectMany(line => form.Matches(line))
            .Select(static key => key.Groups["key"].Value)];

    [GeneratedRegex("""\("(?<key>[a-z]\w*)\??",""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DescribedKey();

    /// <summary>A key that is written at once, or that a shape writes: on the line of the call, or at the start of the next.</summary>
    [GeneratedRegex(
        """(?:\.?Write\w+\((?:json, )?|\.(?:Text|Word|Moment|Uuid|Figure|Count|Seed|Flag|Texts|List|Value|Percentiles)\(|^\s+)"(?<key>[a-z]\w*)"[,)]""",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex WrittenKey();
}
