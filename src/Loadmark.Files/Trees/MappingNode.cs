using Loadmark.Files.Errors;

namespace Loadmark.Files.Trees;

/// <summary>Keys with values. No key stands twice.</summary>
internal sealed class MappingNode(Spot start, bool isFlow) : Node(start)
{
    /// <summary>The mapping's entries, in the order of the file.</summary>
    public List<(ScalarNode Key, Node Value)> Entries { get; } = [];

    /// <summary>Whether the mapping is written in braces.</summary>
    public bool IsFlow { get; } = isFlow;

    /// <inheritdoc/>
    public override string Form => "a group of keys";

    /// <summary>The value of a key; null when it is not there or says nothing.</summary>
    public Node? Find(string key)
    {
        foreach (var (name, value) in Entries)
        {
            if (name.Value == key)
                return value.IsNull ? null : value;
        }

        return null;
    }
}
