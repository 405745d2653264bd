using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Trees;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Loadmark.Files.Writing;

/// <summary>Keeps what a writer writes as a tree. Its nodes have no place in any text.</summary>
internal sealed class TreeBuilder : IEmitter
{
    private readonly Stack<Node> _open = new();
    private ScalarNode? _key;
    private Node? _root;

    /// <summary>The tree of a rig as the program spells it: two rigs are equal when their trees are.</summary>
    /// <exception cref="ArgumentException">The rig has a figure that no text reads back as.</exception>
    public static MappingNode TreeOf(Rig rig)
    {
        return TreeOf(yaml => RigWriter.Write(yaml, rig));
    }

    /// <summary>The tree of a group that is written.</summary>
    public static MappingNode TreeOf(Action<YamlWriter> write)
    {
        var builder = new TreeBuilder();
        write(new YamlWriter(builder));
        return (MappingNode)builder._root!;
    }

    /// <inheritdoc/>
    public void Emit(ParsingEvent @event)
    {
        switch (@event)
        {
            case Scalar scalar:
                AddScalar(new ScalarNode(Spot.Start, scalar.Value, scalar.Style == ScalarStyle.Plain));
                break;
            case MappingStart mapping:
                Open(new MappingNode(Spot.Start, mapping.Style == MappingStyle.Flow));
                break;
            case SequenceStart sequence:
                Open(new SequenceNode(Spot.Start, sequence.Style == SequenceStyle.Flow));
                break;
            case MappingEnd or SequenceEnd:
                _root = _open.Pop();
                break;
        }
    }

    private void AddScalar(ScalarNode scalar)
    {
        if (_key is null && _open.Peek() is MappingNode)
            _key = scalar;
        else
            Add(scalar);
    }

    private void Open(Node node)
    {
        if (_open.Count > 0)
            Add(node);
        _open.Push(node);
    }

    private void Add(Node node)
    {
        if (_open.Peek() is MappingNode mapping)
            mapping.Entries.Add((_key!, node));
        else
            ((SequenceNode)_open.Peek()).Items.Add(node);
        _key = null;
    }
}
