using Loadmark.Files.Errors;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Loadmark.Files.Trees;

/// <summary>Turns the events of the YAML library into a tree, and refuses what a rig file has no use for.</summary>
/// <remarks>
/// The depth is checked at each event, before anything nested further is parsed: the library takes time that grows
/// with the square of the depth, and a walk down a deep tree could exhaust the stack.
/// </remarks>
internal sealed class TreeReader
{
    /// <summary>The deepest nesting; a rig needs six.</summary>
    public const int Deepest = 32;

    private readonly string _text;
    private readonly ErrorList _errors;
    private readonly Parser _parser;
    private readonly LineTable _lines;
    private Spot _last = Spot.Start;

    private TreeReader(string text, ErrorList errors)
    {
        _text = text;
        _errors = errors;
        _lines = new LineTable(text);
        _parser = new Parser(new StringReader(text));
    }

    /// <summary>Reads the only document of a text; null, with an error, when there is none or it is not YAML.</summary>
    public static Node? Read(string text, ErrorList errors)
    {
        var reader = new TreeReader(text, errors);
        try
        {
            return reader.ReadDocument();
        }
        catch (YamlException fault)
        {
            errors.Add(reader.SpotOf(fault), YamlWords.Say(fault.Message));
        }
        catch (InvalidOperationException)
        {
            // The library's own slip where a flow list meets a block key: "[1, 2" and then "b: 3" on the next line.
            errors.Add(reader._last, "a [ or { near here is not closed");
        }
        catch (Exception fault) when (fault is ArgumentException or FormatException or OverflowException)
        {
            // Another slip of the library: the halves of a surrogate pair are put together without a look at the second.
            errors.Add(reader._last, "after here, a \\u in quotes is half a character or not a number");
        }

        return null;
    }

    /// <summary>
    /// The place of a mark. Only its index is taken from the library, whose count of lines goes wrong after a broken
    /// escape and past the end.
    /// </summary>
    private Spot At(Mark mark) => _lines.SpotOf((int)mark.Index);

    private Node? ReadDocument()
    {
        Next();
        if (Next() is not DocumentStart)
        {
            _errors.Add(Spot.Start, "the file is empty; expected a rig, which begins with 'rig: ' and its name", "nothing", "a rig");
            return null;
        }

        var root = ReadNode(Next(), 1);
        if (root is null)
            return null;
        Next();
        if (Next() is DocumentStart second)
        {
            _errors.Add(At(second.Start), "a second document ('---') begins here; one file holds one rig");
            return null;
        }

        return root;
    }

    private ParsingEvent Next()
    {
        _parser.MoveNext();
        var current = _parser.Current ?? throw new InvalidOperationException("The events ended before the stream did.");
        _last = At(current.Start);
        return current;
    }

    private Node? ReadNode(ParsingEvent current, int depth)
    {
        var start = At(current.Start);
        if (current is NodeEvent { Anchor.IsEmpty: false } named && current is not AnchorAlias)
            _errors.Add(
                start,
                $"anchors (&{ErrorList.Quote(named.Anchor.Value)}) are not allowed in a rig file; put text that begins with & in quotes");
        if (current is NodeEvent { Tag: { IsEmpty: false, IsNonSpecific: false } } tagged)
            _errors.Add(
                start, $"tags ({ErrorList.Quote(tagged.Tag.Value)}) are not allowed in a rig file; put text that begins with ! in quotes");

        switch (current)
        {
            case Scalar scalar:
                return new ScalarNode(start, scalar.Value, scalar.Style is ScalarStyle.Plain or ScalarStyle.Any)
                {
                    EndIndex = (int)scalar.End.Index,
                };
            case AnchorAlias alias:
                _errors.Add(
                    start,
                    $"aliases (*{ErrorList.Quote(alias.Value.Value)}) are not allowed in a rig file; write the value out, "
                    + "or put text that begins with * in quotes");
                return new ScalarNode(start, "", isPlain: true) { EndIndex = (int)alias.End.Index };
            case MappingStart or SequenceStart when depth > Deepest:
                _errors.Add(start, $"brackets or lists are nested deeper than {Deepest}; no rig needs that");
                return null;
            case SequenceStart sequence:
                return ReadSequence(sequence, depth);
            case MappingStart mapping:
                return ReadMapping(mapping, depth);
            default:
                throw new InvalidOperationException($"A value cannot begin with {current.GetType().Name}.");
        }
    }

    private SequenceNode? ReadSequence(SequenceStart start, int depth)
    {
        var node = new SequenceNode(At(start.Start), start.Style == SequenceStyle.Flow);
        node.EndIndex = node.Start.Index;
        while (true)
        {
            var current = Next();
            if (current is SequenceEnd)
            {
                if (node.IsFlow)
                    node.EndIndex = EndOfFlow(current, ']');
                return node;
            }

            var item = ReadNode(current, depth + 1);
            if (item is null)
                return null;
            node.Items.Add(item);
            node.EndIndex = item.EndIndex;
        }
    }

    private MappingNode? ReadMapping(MappingStart start, int depth)
    {
        var node = new MappingNode(At(start.Start), start.Style == MappingStyle.Flow);
        node.EndIndex = node.Start.Index;
        var places = new Dictionary<string, Spot>(StringComparer.Ordinal);
        while (true)
        {
            var current = Next();
            if (current is MappingEnd)
            {
                if (node.IsFlow)
                    node.EndIndex = EndOfFlow(current, '}');
                return node;
            }

            var key = ReadNode(current, depth + 1);
            var value = key is null ? null : ReadNode(Next(), depth + 1);
            if (key is null || value is null)
                return null;
            node.EndIndex = Math.Max(key.EndIndex, value.EndIndex);
            if (key is not ScalarNode name)
                _errors.Add(key.Start, $"a key must be a word, found {key.Form}", key.Form, "a word");
            else if (places.TryAdd(name.Value, name.Start))
                node.Entries.Add((name, value));
            else
                AddDuplicate(name, places[name.Value]);
        }
    }

    private void AddDuplicate(ScalarNode name, Spot first) => _errors.Add(
        name.Start,
        $"'{ErrorList.Quote(name.Value)}' stands here a second time; the first is at line {first.Line}, column {first.Column}",
        name.Value);

    private int EndOfFlow(ParsingEvent end, char bracket)
    {
        var index = (int)end.Start.Index;
        return index < _text.Length && _text[index] == bracket ? index + 1 : index;
    }

    private Spot SpotOf(YamlException fault)
    {
        // The library blames the start of the mapping for a tab further down.
        if (fault.Message.Contains("tab", StringComparison.Ordinal))
        {
            var lineStart = 0;
            while (lineStart < _text.Length)
            {
                var end = _text.IndexOf('\n', lineStart);
                var line = _text.AsSpan(lineStart, (end < 0 ? _text.Length : end) - lineStart);
                var indent = line[..(line.Length - line.TrimStart().Length)];
                var tab = indent.IndexOf('\t');
                if (tab >= 0 && lineStart + tab >= fault.Start.Index)
                    return _lines.SpotOf(lineStart + tab);
                if (end < 0)
                    break;
                lineStart = end + 1;
            }
        }

        return fault.Start.Index > 0 ? At(fault.Start) : _last;
    }
}
