using Loadmark.Core.Nameplates;

namespace Loadmark.Terminal;

/// <summary>A label's text as it was given, with what was not understood marked underneath.</summary>
internal static class LabelEcho
{
    /// <summary>Writes the text, in several lines where it is long, each with its marks.</summary>
    public static void Write(Sheet sheet, Nameplate nameplate)
    {
        var text = nameplate.Text;
        if (string.IsNullOrWhiteSpace(text))
        {
            sheet.Line("(an empty label)", SheetStyle.Faint);
            return;
        }

        var unread = UnreadCharacters(nameplate);
        for (var start = 0; start < text.Length;)
        {
            var end = LineEnd(sheet, text, start);
            WriteLine(sheet, text, start, end, unread);
            start = end;
        }
    }

    private static bool[] UnreadCharacters(Nameplate nameplate)
    {
        var unread = new bool[nameplate.Text.Length];
        foreach (var piece in nameplate.Unread)
            unread.AsSpan(piece.Place.Start, piece.Place.Length).Fill(true);
        return unread;
    }

    /// <summary>Where a line that begins at <paramref name="start"/> ends: after a space where there is one.</summary>
    private static int LineEnd(Sheet sheet, string text, int start)
    {
        var end = start;
        var cells = 0;
        var afterSpace = -1;
        while (end < text.Length)
        {
            var next = end + LengthAt(text, end);
            cells += sheet.CellsOf(text[end..next]);
            if (cells > sheet.Width && end > start)
                return afterSpace > start ? afterSpace : end;
            if (char.IsWhiteSpace(text[end]))
                afterSpace = next;
            end = next;
        }

        return end;
    }

    private static void WriteLine(Sheet sheet, string text, int start, int end, bool[] unread)
    {
        while (end > start && char.IsWhiteSpace(text[end - 1]))
            end--;

        for (var index = start; index < end;)
        {
            var stop = index + 1;
            while (stop < end && unread[stop] == unread[index])
                stop++;
            sheet.Put(text[index..stop], unread[index] ? SheetStyle.Orange : SheetStyle.Strong);
            index = stop;
        }

        sheet.EndLine();
        if (!unread.AsSpan(start, end - start).Contains(true))
            return;

        for (var index = start; index < end;)
        {
            var next = index + LengthAt(text, index);
            var cells = sheet.CellsOf(text[index..next]);
            if (unread[index])
                sheet.Put(new string('^', cells), SheetStyle.Orange);
            else
                sheet.PadTo(sheet.Column + cells);
            index = next;
        }

        sheet.EndLine();
    }

    private static int LengthAt(string text, int index) =>
        char.IsHighSurrogate(text[index]) && index + 1 < text.Length && char.IsLowSurrogate(text[index + 1]) ? 2 : 1;
}
