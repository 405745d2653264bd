using Loadmark.Core.Texts;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Reading;

/// <summary>The keys of one group, checked against its table, and the readings of their values.</summary>
internal sealed class Fields
{
    private readonly MappingNode _node;
    private readonly KeyTable _table;

    private Fields(MappingNode node, KeyTable table, ErrorList errors)
    {
        _node = node;
        _table = table;
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
                errors.Add(mapping.Start, $"{table.What} needs the key '{key.Name}'{Unless(key)}: {FirstSentence(key.Description)}", null, $"the key '{key.Name}'");
        }

        return new Fields(mapping, table, errors);
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

    /// <summary>A text, trimmed; null when absent, or with an error when it is empty or not a text.</summary>
    public string? Text(string key)
    {
        if (Scalar(key, "a text") is not { } scalar)
            return null;
        if (!string.IsNullOrWhiteSpace(scalar.Value))
            return scalar.Value.Trim();
        Errors.Expected(scalar.Start, key, "a text", scalar.Value, "it is empty; leave the key out instead");
        return null;
    }

    /// <summary>A text as it stands, not trimmed, possibly empty; null when absent.</summary>
    public string? RawText(string key) => Scalar(key, "a text")?.Value;

    /// <summary>Yes or no; null when absent or, with an error, neither.</summary>
    public bool? YesNo(string key)
    {
        if (Scalar(key, "yes or no") is not { } scalar)
            return null;
        if (YesNoText.Read(scalar.Value) is { } answer)
            return answer;
        Errors.Expected(scalar.Start, key, "yes or no", scalar.Value);
        return null;
    }

    /// <summary>One of a table's words; null when absent or, with an error, none of them.</summary>
    public T? Word<T>(string key, WordTable<T> words)
        where T : struct, Enum
    {
        if (Scalar(key, "a word") is not { } scalar)
            return null;
        if (words.Find(scalar.Value) is { } value)
            return value;
        var nearest = Errors.IsFull ? null : NearestWord.Find(scalar.Value, words.All);
        Errors.Expected(scalar.Start, key, $"one of {string.Join(", ", words.Canonical)}", scalar.Value, null, nearest);
        return null;
    }

    /// <summary>A whole number in a range; null when absent or, with an error, something else.</summary>
    public int? Number(string key, int least, int most)
    {
        if (Scalar(key, "a whole number") is not { } scalar)
            return null;
        if (PlainNumber.TryWhole(scalar.Value.AsSpan().Trim(), out var number) && number >= least && number <= most)
            return number;
        Errors.Expected(scalar.Start, key, $"a whole number from {least} to {most}", scalar.Value);
        return null;
    }

    /// <summary>A quantity; null when absent or, with an error, not one.</summary>
    public Quantity<TUnit>? Figure<TUnit>(string key, string expected, bool mayBeZero = true)
        where TUnit : struct, IUnit =>
        Scalar(key, expected) is { } scalar ? Figures.Read<TUnit>(scalar, key, expected, mayBeZero, SaysUnit(key), Errors) : null;

    private bool SaysUnit(string key) => Array.Exists(_table.Keys, one => one.Name == key && one.Form == ValueForm.FigureOrNumber);

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
        errors.Add(key.Start, $"'{ErrorList.Quote(key.Value)}' is not a key of {table.What}; {hint}", key.Value, $"a key of {table.What}", nearest);
    }

    private static string Unless(Key key) => key.Instead.Count == 0 ? "" : $" where no {string.Join(" or ", key.Instead.Select(static other => $"'{other}'"))} says it";

    /// <summary>The first sentence of a description as the end of another.</summary>
    private static string FirstSentence(string text)
    {
        var end = text.IndexOf(". ", StringComparison.Ordinal);
        var sentence = end < 0 ? text.TrimEnd('.') : text[..end];
        return $"{char.ToLowerInvariant(sentence[0])}{sentence[1..]}";
    }
}
