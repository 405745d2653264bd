using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Readings;

/// <summary>
/// Reads one line of readings as it is typed: <c>delay-2: -9.02 V open, -8.95 V loaded, 212 mA</c>. A current is the draw; volts without a
/// word are the open ones first, then the loaded ones. A comma between digits is a decimal one.
/// </summary>
internal static class TypedReadingLine
{
    /// <summary>Reads a line.</summary>
    public static void Read(string content, Spot at, MeasuredPlugs measured, ErrorList errors)
    {
        var colon = content.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0)
        {
            errors.Add(
                at, $"'{ErrorList.Quote(content)}' is not understood: expected a plug or a load, a colon and what was measured there, "
                    + "as in \"delay-2: -9.02 V open, 212 mA\"", content, "a plug, a colon and readings");
            return;
        }

        if (measured.Find(content[..colon].Trim(), at) is not { } plug)
            return;
        BenchMeasure? volts = null;
        var start = colon + 1;
        foreach (var piece in Pieces(content[start..]))
        {
            var text = piece.Text.Trim();
            var spot = at with { Column = at.Column + start + piece.Start, Index = at.Index + start + piece.Start };
            if (text.Length > 0)
                volts = ReadPiece(text, spot, plug, volts, measured);
        }
    }

    /// <summary>Reads one reading; what the last volts were of goes on, for those that say nothing of themselves.</summary>
    private static BenchMeasure? ReadPiece(string text, Spot at, PlugPlace plug, BenchMeasure? before, MeasuredPlugs measured)
    {
        var (measure, figure) = Worded(text);
        if (measure == BenchMeasure.Draw || (measure is null && EndsInAmps(figure)))
        {
            measured.AddAmps(plug, figure, at);
            return before;
        }

        var of = measure ?? (before is null ? BenchMeasure.Open : BenchMeasure.Loaded);
        measured.AddVolts(plug, of, figure, at);
        return of;
    }

    /// <summary>What a reading says that it is of, before or behind its figure; and the figure.</summary>
    private static (BenchMeasure? Measure, string Figure) Worded(string text)
    {
        for (var at = text.IndexOf(' ', StringComparison.Ordinal); at >= 0; at = text.IndexOf(' ', at + 1))
        {
            if (ReadingColumns.MeasureOf(text.AsSpan(0, at)) is { } before)
                return (before, text[(at + 1)..].Trim());
            if (ReadingColumns.MeasureOf(text.AsSpan(at + 1)) is { } behind)
                return (behind, text[..at].Trim());
        }

        return (null, text);
    }

    private static bool EndsInAmps(string figure) => figure.EndsWith('A') || figure.EndsWith('a');

    /// <summary>The readings of a line, parted by semicolons and by commas that no digit stands behind.</summary>
    private static IEnumerable<(int Start, string Text)> Pieces(string line)
    {
        var start = 0;
        for (var at = 0; at <= line.Length; at++)
        {
            var isEnd = at == line.Length || line[at] == ';'
                || (line[at] == ',' && !(IsDigit(line, at - 1) && IsDigit(line, at + 1)));
            if (!isEnd)
                continue;
            var text = line[start..at];
            yield return (start + (text.Length - text.TrimStart().Length), text);
            start = at + 1;
        }
    }

    private static bool IsDigit(string line, int at) => at >= 0 && at < line.Length && char.IsAsciiDigit(line[at]);
}
