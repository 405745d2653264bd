using System.Globalization;
using System.Text;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Writing;

/// <summary>Writes values in the manner of the file they go into.</summary>
/// <param name="isJson">Whether all texts are in quotes.</param>
/// <param name="isSpaced">Whether a space stands inside braces.</param>
/// <param name="newLine">The line end.</param>
internal sealed class NodeText(bool isJson, bool isSpaced, string newLine)
{
    private const string Step = "  ";

    /// <summary>Whether two values are spelled alike.</summary>
    public static bool Same(Node one, Node other) => (one, other) switch
    {
        (ScalarNode a, ScalarNode b) => a.Value == b.Value && a.IsPlain == b.IsPlain,
        (SequenceNode a, SequenceNode b) => a.Items.Count == b.Items.Count
            && a.Items.Zip(b.Items).All(pair => Same(pair.First, pair.Second)),
        (MappingNode a, MappingNode b) => a.Entries.Count == b.Entries.Count
            && a.Entries.Zip(b.Entries)
                .All(pair => pair.First.Key.Value == pair.Second.Key.Value && Same(pair.First.Value, pair.Second.Value)),
        _ => false,
    };

    /// <summary>Whether a value is written on one line.</summary>
    public static bool IsInline(Node value) => value switch
    {
        MappingNode mapping => mapping.IsFlow || mapping.Entries.Count == 0,
        SequenceNode sequence => sequence.IsFlow || sequence.Items.Count == 0,
        _ => true,
    };

    /// <summary>A value on one line, in brackets where it has several parts.</summary>
    public string Inline(Node value)
    {
        switch (value)
        {
            case ScalarNode scalar:
                return Scalar(scalar);
            case SequenceNode sequence:
                return $"[{string.Join(", ", sequence.Items.Select(Inline))}]";
            case MappingNode { Entries.Count: 0 }:
                return "{}";
            case MappingNode mapping:
                var space = isSpaced ? " " : "";
                var entries = string.Join(", ", mapping.Entries.Select(entry => $"{Key(entry.Key)}: {Inline(entry.Value)}"));
                return $"{{{space}{entries}{space}}}";
            default:
                throw new ArgumentException(value.Form, nameof(value));
        }
    }

    /// <summary>A key as it is written.</summary>
    public string Key(ScalarNode key) => isJson ? Quoted(key.Value) : Scalar(key);

    /// <summary>One entry of a group, or with no key one item of a list, without indentation before its first line.</summary>
    /// <param name="key">The key; null in a list.</param>
    /// <param name="value">The value.</param>
    /// <param name="inFlow">Whether it goes into brackets.</param>
    /// <param name="indent">The spaces before the entry's own line.</param>
    public string Entry(ScalarNode? key, Node value, bool inFlow, string indent)
    {
        if (key is null)
            return inFlow ? Inline(value) : $"- {Inline(value)}";
        return inFlow || IsInline(value) ? $"{Key(key)}: {Inline(value)}" : $"{Key(key)}:{Block(value, indent + Step)}";
    }

    /// <summary>The lines of a value that stands below its key, each with a line end before it.</summary>
    public string Block(Node value, string indent)
    {
        var text = new StringBuilder();
        if (value is SequenceNode sequence)
        {
            foreach (var item in sequence.Items)
                text.Append(newLine).Append(indent).Append(Entry(null, item, inFlow: false, indent));
        }
        else
        {
            foreach (var (key, inner) in ((MappingNode)value).Entries)
                text.Append(newLine).Append(indent).Append(Entry(key, inner, inFlow: false, indent));
        }

        return text.ToString();
    }

    private string Scalar(ScalarNode scalar)
    {
        var isBare = scalar.IsPlain && (!isJson || scalar.Value is "true" or "false" or "null" || IsJsonNumber(scalar.Value));
        return isBare ? scalar.Value : Quoted(scalar.Value);
    }

    private static bool IsJsonNumber(string text) =>
        text.All(char.IsAsciiDigit) && text.Length is > 0 and < 10 && (text[0] != '0' || text.Length == 1);

    /// <summary>A text in quotation marks, as JSON and YAML both read it.</summary>
    public static string Quoted(string value)
    {
        var text = new StringBuilder(value.Length + 2).Append('"');
        foreach (var character in value)
        {
            if (character is '"' or '\\')
                text.Append('\\').Append(character);
            else if (char.IsControl(character) || character is '\u2028' or '\u2029' or '\uFEFF')
                text.Append("\\u").Append(((int)character).ToString("x4", CultureInfo.InvariantCulture));
            else
                text.Append(character);
        }

        return text.Append('"').ToString();
    }
}
