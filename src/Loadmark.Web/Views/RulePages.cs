using System.Collections.Frozen;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Loadmark.Web.Views;

/// <summary>
/// Why the rules are what they are, from their pages in the documentation, which are built into this library. Of a page only this part is
/// shown beside a finding: it holds for every finding of the rule, while what is true of one kind of figure is in the finding's own
/// working.
/// </summary>
public static class RulePages
{
    private const string Prefix = "rules/";
    private const string Heading = "Why";

    private static readonly FrozenDictionary<string, string> Whys = Read().ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The rules that have a page.</summary>
    public static IReadOnlyCollection<string> Rules => Whys.Keys;

    /// <summary>Why a rule is there, as HTML; empty where there is no page.</summary>
    /// <param name="rule">The rule's name.</param>
    public static string WhyOf(string rule) => Whys.GetValueOrDefault(rule, "");

    private static IEnumerable<KeyValuePair<string, string>> Read()
    {
        var library = typeof(RulePages).Assembly;
        foreach (var name in library.GetManifestResourceNames().Where(static name => name.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(library.GetManifestResourceStream(name)!);
            yield return new(name[Prefix.Length..^".md".Length], PageMarkdown.ToHtml(Section(PageMarkdown.Read(reader.ReadToEnd()))));
        }
    }

    /// <summary>What stands under the heading, up to the next one of its rank.</summary>
    private static IEnumerable<Block> Section(MarkdownDocument page) =>
        page.SkipWhile(static block => !IsHeading(block, Heading)).Skip(1)
            .TakeWhile(static block => block is not HeadingBlock { Level: <= 2 });

    private static bool IsHeading(Block block, string words) =>
        block is HeadingBlock { Level: 2, Inline: { } inline } && string.Concat(inline.OfType<LiteralInline>()) == words;
}
