using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Editing;

/// <summary>Cuts the old wiring out of a text and puts the new in. Whether the result is right is for the caller to check.</summary>
internal static class WiringEdit
{
    /// <summary>The text with new wiring.</summary>
    /// <param name="text">A rig file without a byte order mark, known to be readable.</param>
    /// <param name="wired">The new wiring.</param>
    public static string Apply(string text, ValueList<Feed> wired)
    {
        var root = (MappingNode)TreeReader.Read(text, new ErrorList("rig"))!;
        var newLine = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var indent = new string(' ', root.IsFlow ? 0 : root.Start.Column - 1);
        foreach (var (key, value) in root.Entries)
        {
            if (key.Value != "wired")
                continue;
            return root.IsFlow
                ? ReplaceFlow(text, key, value, wired)
                : ReplaceBlock(text, key, value, WiringText.Block(wired, indent, newLine));
        }

        return root.IsFlow
            ? AddToFlow(text, root, wired, newLine)
            : AddToBlock(text, root, WiringText.Block(wired, indent, newLine), indent, newLine);
    }

    private static string ReplaceFlow(string text, ScalarNode key, Node value, ValueList<Feed> wired)
    {
        // A value that is not there ("wired:,") has its place right behind the colon.
        var start = value.EndIndex > value.Start.Index ? value.Start.Index : ColonAfter(text, key) + 1;
        var space = start == value.Start.Index ? "" : " ";
        return $"{text[..start]}{space}{WiringText.Flow(wired)}{text[Math.Max(start, value.EndIndex)..]}";
    }

    private static string AddToFlow(string text, MappingNode root, ValueList<Feed> wired, string newLine)
    {
        var last = root.Entries[^1];
        var firstKey = root.Entries[0].Key.Start;
        var gap = firstKey.Line > root.Start.Line ? newLine + text[(firstKey.Index - firstKey.Column + 1)..firstKey.Index] : " ";
        var end = Math.Max(last.Key.EndIndex, last.Value.EndIndex);
        return $"{text[..end]},{gap}\"wired\": {WiringText.Flow(wired)}{text[end..]}";
    }

    private static string ReplaceBlock(string text, ScalarNode key, Node value, string block)
    {
        var afterColon = ColonAfter(text, key) + 1;
        var keyLineEnd = LineEnd(text, afterColon);
        var valueEnd = Math.Max(value.EndIndex, afterColon);
        while (valueEnd > afterColon && char.IsWhiteSpace(text[valueEnd - 1]))
            valueEnd--;

        // The words after the key stay, unless the old value stands among them.
        var onKeyLine = value.EndIndex > value.Start.Index && value.Start.Index < keyLineEnd;
        if (onKeyLine)
            return $"{text[..afterColon]}{block}{text[valueEnd..]}";
        var oldEnd = valueEnd > keyLineEnd ? LineEnd(text, valueEnd) : keyLineEnd;
        var keyLine = text[afterColon..keyLineEnd];
        return block.StartsWith(' ')
            ? $"{text[..afterColon]}{block}{keyLine}{text[oldEnd..]}"
            : $"{text[..keyLineEnd]}{block}{text[oldEnd..]}";
    }

    private static string AddToBlock(string text, MappingNode root, string block, string indent, string newLine)
    {
        var end = root.EndIndex;
        while (end > 0 && char.IsWhiteSpace(text[end - 1]))
            end--;
        end = LineEnd(text, end);
        var tail = end < text.Length ? text[end..] : newLine;
        return $"{text[..end]}{newLine}{newLine}{indent}wired:{block}{tail}";
    }

    /// <summary>The index of the line's end, before its line break.</summary>
    private static int LineEnd(string text, int from)
    {
        var end = text.AsSpan(from).IndexOfAny('\r', '\n');
        return end < 0 ? text.Length : from + end;
    }

    private static int ColonAfter(string text, ScalarNode key)
    {
        var index = key.EndIndex;
        while (index < text.Length && text[index] is ' ' or '\t')
            index++;
        if (index >= text.Length || text[index] != ':')
            throw new InvalidOperationException("The key 'wired' is written in a way that cannot be edited; write it as 'wired:'.");
        return index;
    }
}
