using Loadmark.Core.Rigs;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>
/// The supplies of a rig before and after an edit with their outlets listed, for a file that lists outlets though the label says the same:
/// what somebody wrote there is changed, not taken out.
/// </summary>
/// <param name="before">What the file says.</param>
/// <param name="after">What it is to say.</param>
internal sealed class ListedOutlets(Rig before, Rig after)
{
    private readonly Lazy<MappingNode> _before = new(() => TreeOf(before));
    private readonly Lazy<MappingNode> _after = new(() => TreeOf(after));

    /// <summary>The keys of a supply before the edit.</summary>
    public Node Before(string id) => _before.Value.Find(id)!;

    /// <summary>The keys of a supply after the edit.</summary>
    public Node After(string id) => _after.Value.Find(id)!;

    private static MappingNode TreeOf(Rig rig) => TreeBuilder.TreeOf(yaml =>
    {
        yaml.BeginGroup();
        foreach (var supply in rig.Supplies)
            SupplyWriter.Write(yaml, supply, listsOutlets: true);
        yaml.EndGroup();
    });
}
