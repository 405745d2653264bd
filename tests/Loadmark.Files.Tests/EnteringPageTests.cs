using System.Text.RegularExpressions;
using Loadmark.Files.Entry;

namespace Loadmark.Files.Tests;

/// <summary>The examples of the page on entering do what it says.</summary>
public sealed partial class EnteringPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "entering.md"));

    [Theory]
    [InlineData("loads")]
    [InlineData("outlets")]
    [InlineData("supplies")]
    [InlineData("table")]
    [InlineData("supply-table")]
    public void The_examples_come_out_as_shown(string kind)
    {
        var example = Example().Matches(Page).Single(match => match.Groups["kind"].Value == kind);
        var text = example.Groups["text"].Value;
        var reading = kind switch
        {
            "loads" => LabelLines.Read(text, new EntryTarget(EntryKind.Loads, [])),
            "outlets" => LabelLines.Read(text, new EntryTarget(EntryKind.Outlets, [])),
            "supplies" => LabelLines.Read(text, new EntryTarget(EntryKind.Supplies, [])),
            "table" => LoadTable.Read(text, new EntryTarget(EntryKind.Loads, [])),
            _ => SupplyTable.Read(text, []),
        };
        var shown = Row().Matches(Page[example.Index..].Split("\n## ")[0].Split("\nA table of")[0]).Select(match => (match.Groups["of"].Value, match.Groups["is"].Value)).ToList();
        var columns = kind == "table" ? reading.Columns.Select(column => (column.Name!, column.Becomes ?? "left out")) : [];
        Assert.Equal(columns.Concat(reading.Rows.Select(row => ($"{row.Line}", Say(row)))), shown);
    }

    private static string Say(EntryRow row)
    {
        if (row.Refusal is { } refusal)
            return $"refused: {refusal.Because}";
        if (row.Load is { } load)
            return $"load {load.Id}{(row.IsIdProposed ? ", a proposed tag" : "")}";
        if (row.Supply is { } supply)
            return $"supply {supply.Id} with {supply.Outlets.Count} outlet{(supply.Outlets.Count == 1 ? "" : "s")}";
        return $"outlets {string.Join(", ", row.Outlets.Select(outlet => outlet.Id))}{(row.IsIdProposed ? ", a proposed id" : "")}";
    }

    [GeneratedRegex(@"```(?<kind>[a-z-]+)\n(?<text>.*?)\n```", RegexOptions.Singleline, 1000)]
    private static partial Regex Example();

    [GeneratedRegex(@"^\| (?!line|column|---)(?<of>.*?) \| (?<is>.*) \|$", RegexOptions.Multiline, 1000)]
    private static partial Regex Row();
}
