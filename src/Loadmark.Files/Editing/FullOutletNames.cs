using Loadmark.Core.Rigs;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>
/// Writes the outlet into feeds that name a supply alone, as they may where it has one outlet: once it gets a second one, they would
/// no longer say which.
/// </summary>
internal static class FullOutletNames
{
    /// <summary>The text with every outlet named in full, which says the same.</summary>
    /// <param name="text">The text, without a byte order mark.</param>
    /// <param name="root">Its tree.</param>
    /// <param name="rig">What it says.</param>
    public static string Spell(string text, MappingNode root, Rig rig)
    {
        var source = new SourceText(text);
        var splices = new Splices(text);
        foreach (var feed in (root.Find("wired") as SequenceNode)?.Items.OfType<MappingNode>() ?? [])
        {
            IEnumerable<Node> named = feed.Find("from") is SequenceNode several ? several.Items : [feed.Find("from") ?? feed];
            foreach (var scalar in named.OfType<ScalarNode>().Where(static scalar => !scalar.Value.Contains('/', StringComparison.Ordinal)))
            {
                if (rig.Supplies.Items.FirstOrDefault(one => one.Id == scalar.Value.Trim()) is not { Outlets: { Count: 1 } outlets } supply)
                    continue;
                var full = $"{supply.Id}/{outlets[0].Id}";
                splices.Replace(
                    scalar.Start.Index,
                    source.EndOf(null, scalar),
                    scalar.IsPlain && PlainText.Suits(full, numberIsFine: false) ? full : NodeText.Quoted(full));
            }
        }

        return splices.Apply() ?? text;
    }
}
