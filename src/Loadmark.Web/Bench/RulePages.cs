using System.Collections.Frozen;

namespace Loadmark.Web.Bench;

/// <summary>Why the rules are what they are, from their pages in the documentation, which are built into this library.</summary>
public static class RulePages
{
    private const string Prefix = "rules/";

    private static readonly FrozenDictionary<string, string> Whys = Read().ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Why a rule is there, in one or more paragraphs parted by empty lines; empty where there is no page.</summary>
    /// <param name="rule">The rule's name.</param>
    public static string WhyOf(string rule) => Whys.GetValueOrDefault(rule, "");

    private static IEnumerable<KeyValuePair<string, string>> Read()
    {
        var library = typeof(RulePages).Assembly;
        foreach (var name in library.GetManifestResourceNames().Where(static name => name.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(library.GetManifestResourceStream(name)!);
            yield return new(name[Prefix.Length..^".md".Length], Section(reader.ReadToEnd(), "## Why"));
        }
    }

    /// <summary>The text under a heading, its paragraphs each on one line.</summary>
    private static string Section(string page, string heading)
    {
        var paragraphs = page.ReplaceLineEndings("\n").Split("\n\n");
        var start = Array.FindIndex(paragraphs, paragraph => paragraph.Trim() == heading);
        return start < 0
            ? ""
            : string.Join("\n\n", paragraphs[(start + 1)..].TakeWhile(static paragraph => !paragraph.StartsWith("## ", StringComparison.Ordinal)).Select(static paragraph => paragraph.Replace('\n', ' ').Trim()));
    }
}
