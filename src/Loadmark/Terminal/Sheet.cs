using System.Text;
using Loadmark.Processes;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Loadmark.Terminal;

/// <summary>
/// A page of text being set: lines of styled pieces, wrapped to its width with hanging indents. All text passes through
/// <see cref="TerminalText"/> here, and none is ever taken as markup.
/// </summary>
/// <param name="width">How wide the page is, in character cells.</param>
/// <param name="unicode">Whether it can show characters beyond ASCII.</param>
/// <param name="colour">Whether it takes colour; without, the styles are left out.</param>
internal sealed class Sheet(int width, bool unicode, bool colour) : IRenderable
{
    private readonly List<Segment> _segments = [];
    private readonly StringBuilder _run = new();
    private Style? _runStyle;
    private const string Blank = "                                                                                ";

    private int _column;
    private int _pending;

    /// <summary>How wide the page is, in character cells.</summary>
    public int Width => width;

    /// <summary>Whether the sheet can show characters beyond ASCII.</summary>
    public bool Unicode => unicode;

    /// <summary>How many cells of the line are taken, spaces to come included.</summary>
    public int Column => _column + _pending;

    /// <summary>The text as this page can show it.</summary>
    public string Fit(string text)
    {
        var safe = TerminalText.Neutral(text);
        return unicode ? safe : TerminalText.Ascii(safe);
    }

    /// <summary>How many cells a text takes as this page shows it.</summary>
    public int CellsOf(string text) => CellWidth.Of(Fit(text));

    /// <summary>Puts text on the line as it is, unwrapped.</summary>
    public Sheet Put(string text, Style? style = null)
    {
        PutFitted(Fit(text), style);
        return this;
    }

    /// <summary>Puts text on the line so that it ends at <paramref name="column"/>.</summary>
    public Sheet PutRight(string text, int column, Style? style = null)
    {
        var fitted = Fit(text);
        PadTo(column - CellWidth.Of(fitted));
        PutFitted(fitted, style);
        return this;
    }

    /// <summary>Puts text on the line, shortened with an ellipsis to at most <paramref name="cells"/> cells.</summary>
    public Sheet PutShortened(string text, int cells, Style? style = null)
    {
        PutFitted(Shorten(Fit(text), cells), style);
        return this;
    }

    /// <summary>Moves on to a column; stays where it is when the line is already there. Leaves no space at a line's end.</summary>
    public Sheet PadTo(int column)
    {
        _pending = Math.Max(_pending, column - _column);
        return this;
    }

    /// <summary>Puts text on the line and, where it does not fit, on more lines that begin at <paramref name="hang"/>.</summary>
    public Sheet Wrap(string text, int hang, Style? style = null)
    {
        var first = true;
        foreach (var word in Fit(text).Split(' '))
        {
            if (word.Length == 0)
                continue;
            PutWord(word, hang, style, spaced: !first);
            first = false;
        }

        return this;
    }

    /// <summary>Ends the line.</summary>
    public Sheet EndLine()
    {
        Append("\n", null);
        _column = 0;
        _pending = 0;
        return this;
    }

    /// <summary>Puts a whole line.</summary>
    public Sheet Line(string text, Style? style = null) => Put(text, style).EndLine();

    /// <summary>Puts a thin line across the page, with air around it.</summary>
    public Sheet Rule() =>
        BlankLine().Put(string.Concat(Enumerable.Repeat(unicode ? "─" : "-", width)), SheetStyle.Faint).EndLine().BlankLine();

    /// <summary>Puts an empty line.</summary>
    public Sheet BlankLine() => EndLine();

    /// <inheritdoc/>
    public Measurement Measure(RenderOptions options, int maxWidth) => new(width, width);

    /// <inheritdoc/>
    public IEnumerable<Segment> Render(RenderOptions options, int maxWidth)
    {
        FlushRun();
        return _segments;
    }

    private string Shorten(string fitted, int cells)
    {
        if (CellWidth.Of(fitted) <= cells)
            return fitted;

        var ellipsis = unicode ? "…" : "..";
        var length = fitted.Length;
        while (length > 0 && (CellWidth.Of(fitted[..length]) + ellipsis.Length > cells || char.IsLowSurrogate(fitted[length])))
            length--;
        return fitted[..length] + ellipsis;
    }

    private void PutWord(string word, int hang, Style? style, bool spaced)
    {
        var cells = CellWidth.Of(word);
        var gap = spaced && Column > hang ? 1 : 0;
        if (Column + gap + cells > width && Column > hang)
        {
            EndLine();
            PadTo(hang);
            gap = 0;
        }

        if (gap > 0)
            PutFitted(" ", style);
        // Longer than a line: cut where the line ends, never inside a surrogate pair. A character takes at most two cells, so no more of
        // what is left than that has to be measured.
        var start = 0;
        while (width > hang + 1 && Column + CellWidth.Of(word[start..Math.Min(word.Length, start + (2 * width) + 2)]) > width)
        {
            var length = 1;
            while (start + length < word.Length && Column + CellWidth.Of(word[start..(start + length + 1)]) <= width)
                length++;
            if (char.IsHighSurrogate(word[start + length - 1]) && start + length < word.Length)
                length += length > 1 ? -1 : 1;
            PutFitted(word.Substring(start, length), style);
            start += length;
            EndLine();
            PadTo(hang);
        }

        PutFitted(word[start..], style);
    }

    private void PutFitted(string fitted, Style? style)
    {
        if (fitted.Length == 0)
            return;

        Append(Spaces(_pending), null);
        _column += _pending;
        _pending = 0;
        Append(fitted, style);
        _column += CellWidth.Of(fitted);
    }

    /// <summary>Gathers text of one style, so that a page without colour is one piece.</summary>
    private void Append(string text, Style? style)
    {
        if (text.Length == 0)
            return;

        var ink = colour ? style : null;
        if (ink != _runStyle)
            FlushRun();
        _runStyle = ink;
        _run.Append(text);
    }

    private void FlushRun()
    {
        if (_run.Length > 0)
            _segments.Add(new Segment(_run.ToString(), _runStyle ?? Style.Plain));
        _run.Clear();
    }

    /// <summary>Cut from a constant: filling a new string wakes vector code that only the compiler at run time makes.</summary>
    private static string Spaces(int count) => count <= Blank.Length ? Blank[..count] : new string(' ', count);
}
