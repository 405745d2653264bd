using Loadmark.Files.Errors;

namespace Loadmark.Files.Trees;

/// <summary>A node that is a list.</summary>
internal sealed class SequenceNode(Spot start, bool isFlow) : Node(start)
{
    /// <summary>The list's items, in the order of the file.</summary>
    public List<Node> Items { get; } = [];

    /// <summary>Whether the list is written in brackets.</summary>
    public bool IsFlow { get; } = isFlow;

    /// <inheritdoc/>
    public override string Form => "a list";
}
