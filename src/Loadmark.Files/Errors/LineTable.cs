namespace Loadmark.Files.Errors;

/// <summary>Knows where the lines of a text begin. A line ends with LF, CR LF or CR.</summary>
internal sealed class LineTable
{
    private readonly List<int> _starts = [0];
    private readonly int _length;

    /// <summary>Finds the lines of a text.</summary>
    public LineTable(ReadOnlySpan<char> text)
    {
        _length = text.Length;
        var index = 0;
        while (true)
        {
            var end = text[index..].IndexOfAny('\r', '\n');
            if (end < 0)
                return;
            index += end + 1;
            if (text[index - 1] == '\r' && index < text.Length && text[index] == '\n')
                index++;
            _starts.Add(index);
        }
    }

    /// <summary>The place of a character; of one past the end, the text's end.</summary>
    /// <param name="index">From 0, in UTF-16 code units.</param>
    public Spot SpotOf(int index)
    {
        index = Math.Clamp(index, 0, _length);
        var line = _starts.BinarySearch(index);
        line = line < 0 ? ~line - 1 : line;
        return new Spot(line + 1, index - _starts[line] + 1, index);
    }
}
