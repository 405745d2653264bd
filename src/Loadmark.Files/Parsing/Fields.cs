using Loadmark.Core.Texts;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>The keys of one group, checked against its table, and the readings of their values.</summary>
internal sealed class Fields
{
    private readonly MappingNode _node;

    private Fields(MappingNode node, ErrorList errors)
    {
        _node = node;
        Errors = errors;
    }

    /// <summary>Where faults go.</summary>
    public ErrorList Errors { get; }

    /// <summary>Where the group begins.</summary>
    public Spot Start => _node.Start;

    /// <summary>Takes a group; null, with an error, when the node is not one. Keys not in the table are errors.</summary>
    /// <param name="node">The node.</param>
    /// <param name="owner">What it is the value of, for messages.</param>
    /// <param name="table">The keys it may have.</param>
    /// <param name="errors">Where faults go.</param>
    public static Fields? Of(Node node, string owner, KeyTable table, ErrorList errors)
    {
        if (AsGroup(node, table) is not { } mapping)
        {
            var keys = $"the keys of {table.What}";
            errors.ExpectedForm(node.Start, node.Form, owner, table.TextKey is { } text ? $"its {text}, or {keys}" : keys);
            return null;
        }

        foreach (var (key, _) in mapping.Entries)
        {
            if (!table.Has(key.Value))
                AddUnknown(key, table, errors);
        }

        foreach (var key in table.Keys)
        {
            if (key.IsRequired && mapping.Find(key.Name) is null && !key.Instead.Any(other => mapping.Find(other) is not null))
                errors.Add(
                    mapping.Start,
                    $"{table.What} needs the key '{key.Name}'{Unless(key)}: {FirstSentence(key.Description)}",
                    null,
                    $"the key '{key.Name}'");
        }

        return new Fields(mapping, errors);
    }

    /// <summary>A node as a group of keys: a text alone is the value of the table's own key for it; null when it is neither.</summary>
    private static MappingNode? AsGroup(Node node, KeyTable table)
    {
        if (node is not ScalarNode { IsNull: false } || table.TextKey is not { } key)
            return node as MappingNode;
        var group = new MappingNode(node.Start, isFlow: true);
        group.Entries.Add((new ScalarNode(node.Start, key, isPlain: true), node));
        return group;
    }

    /// <summary>The value of a key; null when it is not there or says nothing.</summary>
    public Node? Find(string key) => _node.Find(key);

    /// <summary>Whether a key is there, though it may say nothing.</summary>
    public bool Says(string key) => _node.Entries.Exists(entry => entry.Key.Value == key);

    /// <summary>The value of a key; null when absent or, with an error, not of the kind.</summary>
    public object? Value(string key, ValueKind kind) => Scalar(key, kind.Expected) is { } scalar ? kind.Read(scalar, key, Errors) : null;

    /// <summary>
    /// A thing with what its keys say put over what it had. A key that is there and says nothing says that there is none; of a key that is
    /// not there, what the thing had stays.
    /// </summary>
    public T Over<T>(T thing, FieldTable<T> table)
    {
        foreach (var field in table.Fields)
        {
            if (Says(field.Name))
                thing = field.Read(thing, Scalar(field.Name, field.Expected), Errors);
        }

        return thing;
    }

    /// <summary>The text of a key; null when absent or, with an error, not a text.</summary>
    public ScalarNode? Scalar(string key, string expected)
    {
        switch (Find(key))
        {
            case null:
                return null;
            case ScalarNode scalar:
                return scalar;
            case var other:
                Errors.ExpectedForm(other.Start, other.Form, key, expected);
                return null;
        }
    }

    /// <summary>The texts of a key that takes one or a list; empty when absent.</summary>
    public List<ScalarNode> Scalars(string key, string expected)
    {
        var scalars = new List<ScalarNode>();
        switch (Find(key))
        {
            case null:
                break;
            case ScalarNode scalar:
                scalars.Add(scalar);
                break;
            case SequenceNode sequence:
                if (sequence.Items.Count == 0)
                    Errors.Add(sequence.Start, $"{key}: expected {expected}, found an empty list", "an empty list", expected);
                foreach (var item in sequence.Items)
                {
                    if (item is ScalarNode one)
                        scalars.Add(one);
                    else
                        Errors.ExpectedForm(item.Start, item.Form, key, expected);
                }

                break;
            case var other:
                Errors.ExpectedForm(other.Start, other.Form, key, expected);
                break;
        }

        return scalars;
    }

    private static void AddUnknown(ScalarNode key, KeyTable table, ErrorList errors)
    {
        var names = table.Keys.Select(known => known.Name);
        var nearest = errors.IsFull ? null : NearestWord.Find(key.Value, names);
        var hint = nearest is null ? $"its keys are {string.Join(", ", names)}" : $"did you mean '{nearest}'?";
        errors.Add(
            key.Start,
            $"'{ErrorList.Quote(key.Value)}' is not a key of {table.What}; {hint}",
            key.Value,
            $"a key of {table.What}",
            nearest);
    }

    private static string Unless(Key key) =>
        key.Instead.Count == 0 ? "" : $" where no {string.Join(" or ", key.Instead.Select(static other => $"'{other}'"))} says it";

    /// <summary>The first sentence of a description as the end of another.</summary>
    private static string FirstSentence(string text)
    {
        var end = text.IndexOf(". ", StringComparison.Ordinal);
        var sentence = end < 0 ? text.TrimEnd('.') : text[..end];
        return SentenceCase.Small(sentence);
    }
}
