using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>The labels of technician-labels.txt, and how a reading compares with what was written down for it.</summary>
internal static class TechnicianLabels
{
    private const string Arrow = "  =>  ";

    public static IReadOnlyList<(string Group, string Label, string[] Facts)> All { get; } = Read();

    /// <summary>What a reading misses of the facts, and what it asserts that is not so.</summary>
    public static (List<string> Missed, List<string> Wrong, List<string> Superfluous) Compare(string label, string[] facts)
    {
        var read = LabelFacts.Of(NameplateReader.Read(label));
        var optional = facts.Where(IsOptional).Select(fact => fact[1..^1]).ToList();
        var missed = facts.Where(fact => !IsOptional(fact)).ToList();
        var extra = read.Where(fact => !missed.Remove(fact) && !optional.Remove(fact)).ToList();

        // A setting of which a figure is missing says nothing wrong; the missing figure is missed.
        var one = facts.Count(fact => fact.StartsWith("outlets", StringComparison.Ordinal)) == 1;
        var wrong = extra.Where(fact => !LabelFacts.IsOpen(fact) && !facts.Any(known => IsPartOf(fact, known.Trim('(', ')'), one))).ToList();
        return (missed, wrong, extra.Where(LabelFacts.IsOpen).ToList());
    }

    private static bool IsOptional(string fact) => fact.StartsWith('(');

    /// <summary>Whether every figure of a setting is one of a known setting, or of the one group of outlets.</summary>
    private static bool IsPartOf(string fact, string known, bool oneGroup)
    {
        var modes = known.StartsWith("outlets", StringComparison.Ordinal) ? oneGroup ? known[(known.IndexOf(": ", StringComparison.Ordinal) + 2)..] : "" : known;
        return char.IsAsciiDigit(fact[0]) && modes.Split(" + ").Any(mode => char.IsAsciiDigit(mode.FirstOrDefault()) && $" {mode} ".Contains($" {fact} ", StringComparison.Ordinal));
    }

    private static List<(string, string, string[])> Read()
    {
        List<(string, string, string[])> rows = [];
        var group = "";
        foreach (var line in File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Nameplates", "technician-labels.txt")))
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
                group = line[3..];
            else if (line.Length > 0 && !line.StartsWith("# ", StringComparison.Ordinal) && line.IndexOf(Arrow.TrimEnd(), StringComparison.Ordinal) is >= 0 and var at)
                rows.Add((group, line[..at].Replace("\\n", "\n").Replace("\\t", "\t"), line[(at + Arrow.Length - 2)..].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)));
        }

        return rows;
    }
}
