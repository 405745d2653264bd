using Loadmark.Files.Errors;

namespace Loadmark.Files.Trees;

/// <summary>A list.</summary>
internal sealed class SequenceNode(Spot start, bool isFlow) : Node(start)
{
    /// <summary>Its items, in order.</summary>
    public List<Node> Items { get; } = [];

    /// <summary>Whether it is written in brackets.</summary>
    public bool IsFlow { get; } = isFlow;

    /// <inheritdoc/>
    public override string Form => "a list";
}
