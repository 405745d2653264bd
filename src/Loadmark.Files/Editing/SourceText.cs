using Loadmark.Files.Trees;

namespace Loadmark.Files.Editing;

/// <summary>The text of a rig file with the places that edits ask for.</summary>
/// <param name="text">The text, without a byte order mark.</param>
internal sealed class SourceText(string text)
{
    /// <summary>The whole text that is being edited.</summary>
    public string Text => text;

    /// <summary>The line end that new lines get: the one the text has.</summary>
    public string NewLine { get; } =
        text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : text.Contains('\r') && !text.Contains('\n') ? "\r" : "\n";

    /// <summary>Index of the first character of a line.</summary>
    public int LineStart(int index) => text.AsSpan(0, index).LastIndexOfAny('\r', '\n') + 1;

    /// <summary>Index of the line's end, before its line break.</summary>
    public int LineEnd(int index)
    {
        var end = text.AsSpan(index).IndexOfAny('\r', '\n');
        return end < 0 ? text.Length : index + end;
    }

    /// <summary>Index of the end of the line before, before its line break; 0 on the first line.</summary>
    public int LastLineEnd(int index)
    {
        var start = LineStart(index);
        return start == 0 ? 0 : start - (text.AsSpan(0, start).EndsWith("\r\n") ? 2 : 1);
    }

    /// <summary>Index of the next line's first character; the text's end when there is none.</summary>
    public int NextLine(int index)
    {
        var end = LineEnd(index);
        return end == text.Length ? end : end + (text.AsSpan(end).StartsWith("\r\n") ? 2 : 1);
    }

    /// <summary>Whether only spaces stand before a character on its line.</summary>
    public bool IsFirstOnLine(int index) => text.AsSpan(LineStart(index), index - LineStart(index)).Trim(" \t").IsEmpty;

    /// <summary>Whether a piece may hold a comment: it does when it holds a number sign outside quotes.</summary>
    public bool MayHoldComment(int start, int end) => text.AsSpan(start, end - start).Contains('#');

    /// <summary>Index of the colon after a key; -1 when it is not straight behind it.</summary>
    public int ColonAfter(ScalarNode key)
    {
        var index = key.EndIndex;
        while (index < text.Length && text[index] is ' ' or '\t')
            index++;
        return index < text.Length && text[index] == ':' ? index : -1;
    }

    /// <summary>Index of the comma after a value in brackets, past line breaks and comments; -1 when there is none.</summary>
    public int CommaAfter(int index)
    {
        while (index < text.Length)
        {
            if (text[index] == ',')
                return index;
            if (text[index] == '#')
                index = LineEnd(index);
            else if (char.IsWhiteSpace(text[index]))
                index++;
            else
                break;
        }

        return -1;
    }

    /// <summary>Whether a value is not there at all, as in <c>label:</c>.</summary>
    public static bool IsMissing(Node value) => value is ScalarNode && value.EndIndex <= value.Start.Index;

    /// <summary>Index past the last character of a value, line breaks aside; of one that is not there, past its colon.</summary>
    public int EndOf(ScalarNode? key, Node value)
    {
        if (key is not null && IsMissing(value))
            return ColonAfter(key) is >= 0 and var colon ? colon + 1 : key.EndIndex;
        switch (value)
        {
            case MappingNode { IsFlow: false, Entries: [.., var (lastKey, last)] }:
                return EndOf(lastKey, last);
            case SequenceNode { IsFlow: false, Items: [.., var last] }:
                return EndOf(null, last);
            default:
                var end = value.EndIndex;
                while (end > value.Start.Index && char.IsWhiteSpace(text[end - 1]))
                    end--;
                return end;
        }
    }
}
