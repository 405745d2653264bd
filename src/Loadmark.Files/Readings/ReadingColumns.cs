using Loadmark.Core.Acceptance;

namespace Loadmark.Files.Readings;

/// <summary>The columns of a table of readings, and the words that people have for them.</summary>
internal static class ReadingColumns
{
    /// <summary>The column that says which plug.</summary>
    public const string Plug = "plug";

    /// <summary>The column that says which load, told for people beside the plug; alone it says which plug.</summary>
    public const string Load = "load";

    /// <summary>What is measured, in words and as names of columns.</summary>
    public static string NameOf(BenchMeasure measure) => measure switch
    {
        BenchMeasure.Open => "open",
        BenchMeasure.Loaded => "loaded",
        BenchMeasure.Draw => "draw",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "It has no name."),
    };

    /// <summary>What is measured by a word for it; null where it is none.</summary>
    public static BenchMeasure? MeasureOf(ReadOnlySpan<char> word) => Plain(word) switch
    {
        "OPEN" or "NO LOAD" or "NO-LOAD" or "UNLOADED" => BenchMeasure.Open,
        "LOADED" or "RUNNING" or "ON LOAD" => BenchMeasure.Loaded,
        "DRAW" or "DRAWS" or "CURRENT" => BenchMeasure.Draw,
        _ => null,
    };

    /// <summary>The column's name in its one form: what is measured, which plug, or which load; null where it is none of them.</summary>
    public static string? Find(ReadOnlySpan<char> head)
    {
        var word = Plain(WithoutUnit(head));
        return word switch
        {
            "PLUG" or "POINT" or "OUTLET" or "LEAD" => Plug,
            "LOAD" or "PEDAL" => Load,
            "EXPECTED" or "EXPECTED OPEN" or "EXPECTED LOADED" or "EXPECTED DRAW" => "",
            _ => MeasureOf(word) is { } measure ? NameOf(measure) : null,
        };
    }

    /// <summary>The unit that a column's head puts in brackets or at its end, as in "draw mA" and "open (V)"; empty for none.</summary>
    public static string UnitOf(string head)
    {
        var plain = head.Replace('(', ' ').Replace(')', ' ').TrimEnd();
        var word = plain[(plain.LastIndexOf(' ') + 1)..];
        return word is "V" or "mV" or "A" or "mA" ? word : "";
    }

    /// <summary>Whether a line names the columns of a table: which plug, and at least one thing that is measured.</summary>
    public static bool IsHead(string line)
    {
        var names = line.Split(',', ';', '\t').Select(static cell => Find(cell.Trim().Trim('"'))).ToList();
        return names.Count > 1 && names.Any(static name => name is Plug or Load)
            && names.Any(static name => name is { Length: > 0 } and not Plug and not Load);
    }

    private static ReadOnlySpan<char> WithoutUnit(ReadOnlySpan<char> head)
    {
        var text = head.Trim();
        var unit = UnitOf(text.ToString());
        if (unit.Length == 0)
            return text;
        return text[..text.LastIndexOf(unit)].TrimEnd().TrimEnd('(').TrimEnd();
    }

    private static string Plain(ReadOnlySpan<char> word) => word.Trim().ToString().ToUpperInvariant();
}
