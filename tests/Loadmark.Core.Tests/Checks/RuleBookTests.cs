using Loadmark.Core.Checks;

namespace Loadmark.Core.Tests.Checks;

public sealed class RuleBookTests
{
    /// <summary>The rules that judge a rig by its circuit; tests/Loadmark.Simulation.Tests holds them to the same.</summary>
    private static readonly string[] CircuitRules = ["sags", "does-not-start"];

    public static TheoryData<string> Names => [.. RuleBook.Rules.Select(rule => rule.Id.Name)];

    [Fact]
    public void Holds_the_rules_of_the_design_with_their_severities()
    {
        var design = new Dictionary<Severity, string>
        {
            [Severity.Harm] = "over-voltage reversed-polarity ac-into-dc dc-into-ac ac-shared ground-short series-short parallel-unequal mains-mismatch",
            [Severity.Fails] = "under-voltage outlet-overload start-overload bank-overload supply-overload plug-mismatch unfed fed-twice outlet-used-twice lead-short-of-plugs sags does-not-start",
            [Severity.Unsure] = "unregulated",
            [Severity.Noise] = "shared-return-digital return-not-its-own",
            [Severity.Margin] = "thin-headroom voltage-high voltage-low plug-loose names-alike",
            [Severity.Note] = "figure-assumed idle-capacity figure-conflict figure-derived",
        };
        foreach (var (severity, names) in design)
        {
            Assert.Equal(
                names.Split(' ').Except(CircuitRules, StringComparer.Ordinal),
                RuleBook.Rules.Where(rule => rule.Severity == severity).Select(rule => rule.Id.Name));
        }

        Assert.All(RuleBook.Rules, rule => Assert.NotEmpty(rule.Source));
        Assert.Equal(31, RuleBook.Rules.Length);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_rule_speaks_once_about_the_smallest_rig_that_breaks_it(string name)
    {
        var rule = RuleBook.Rules.Single(rule => rule.Id == name);
        var (rig, subjects) = RuleSamples.All[name];

        var result = NameplateCheck.Of(rig);

        var finding = Expect.Breaks(result, name);
        Assert.Equal(rule.Severity, finding.Severity);
        Assert.Equal(rule.Source, finding.Source);
        Assert.Equal(subjects, finding.Subjects);
        Assert.EndsWith(".", finding.Message, StringComparison.Ordinal);
        Assert.Contains(subjects[0], finding.Message, StringComparison.Ordinal);
        Assert.Equal(name == "figure-derived", finding.Remedy.Length == 0);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_smallest_rig_breaks_no_other_rule_of_the_same_or_a_worse_severity(string name)
    {
        var rule = RuleBook.Rules.Single(rule => rule.Id == name);
        var result = NameplateCheck.Of(RuleSamples.All[name].Rig);
        Assert.Equal(rule.Severity, result.Verdict);
        Assert.All(result.Findings, finding => Assert.True(finding.Rule == name || finding.Severity < rule.Severity, finding.Rule));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_rule_has_a_page_that_states_it(string name)
    {
        var rule = RuleBook.Rules.Single(rule => rule.Id == name);
        var lines = File.ReadAllLines(Path.Combine(Pages(), name + ".md"));

        Assert.Equal($"# {name}", lines[0]);
        Assert.Contains(lines, line => line.StartsWith($"Severity: **{Word(rule.Severity)}**", StringComparison.Ordinal));
        Assert.Equal(["## Source", "", rule.Source], lines[^3..]);
        Assert.All(
            ["## Why", "## Working", "## When data is missing", "## What to do"],
            heading => Assert.NotEmpty(lines[Array.IndexOf(lines, heading) + 2]));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_page_shows_the_working_as_the_program_gives_it(string name)
    {
        var working = Expect.Breaks(NameplateCheck.Of(RuleSamples.All[name].Rig), name).Working;
        var page = File.ReadAllLines(Path.Combine(Pages(), name + ".md"));
        Assert.Contains(working, page);
    }

    [Fact]
    public void No_page_is_without_a_rule_and_the_index_names_each_under_its_severity()
    {
        var names = RuleBook.Rules.Select(rule => rule.Id.Name).Concat(CircuitRules).Order(StringComparer.Ordinal);
        var pages = Directory.GetFiles(Pages(), "*.md").Select(path => Path.GetFileNameWithoutExtension(path)).Where(page => page != "README");
        Assert.Equal(names, pages.Order(StringComparer.Ordinal));

        var severity = "";
        var listed = new List<string>();
        foreach (var line in File.ReadAllLines(Path.Combine(Pages(), "README.md")))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
                severity = line[3..line.IndexOf(':', StringComparison.Ordinal)];
            else if (line.StartsWith("| [", StringComparison.Ordinal))
                listed.Add($"{severity} {line[3..line.IndexOf(']', StringComparison.Ordinal)]}");
        }

        Assert.Equal(RuleBook.Rules.Select(rule => $"{rule.Severity} {rule.Id}"), listed.Where(line => !CircuitRules.Contains(line.Split(' ')[1])));
    }

    private static string Word(Severity severity) => severity.ToString().ToLowerInvariant();

    private static string Pages()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Loadmark.slnx")))
                return Path.Combine(folder.FullName, "docs", "rules");
        }

        throw new DirectoryNotFoundException("The tests are run outside the source tree, so the pages of the rules are not there.");
    }
}
