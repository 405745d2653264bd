using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Files.Errors;
using Loadmark.Files.Tables;

namespace Loadmark.Files.Readings;

/// <summary>Goes through the lines of what was measured; an instance serves once.</summary>
internal sealed class SessionLines(string text, PlugList plugs, ErrorList errors)
{
    private readonly MeasuredPlugs _measured = new(plugs, errors);
    private BenchSession _session = new();

    /// <summary>The session; complete only where there are no errors.</summary>
    public BenchSession Read()
    {
        var lines = new LineTable(text);
        for (var start = 0; start < text.Length;)
        {
            var end = text.AsSpan(start).IndexOfAny('\r', '\n') is >= 0 and var length ? start + length : text.Length;
            var line = text[start..end];
            var content = line.Trim();
            var at = lines.SpotOf(start + (line.Length - line.TrimStart().Length));
            if (content.Length > 0 && content[0] != '#')
            {
                if (ReadingColumns.IsHead(content))
                {
                    new ReadingTable(_measured, errors).Read(CsvTable.Read(Blanked(start), errors));
                    break;
                }

                if (!SessionHeading.TryRead(content, at, ref _session, errors))
                    TypedReadingLine.Read(content, at, _measured, errors);
            }

            start = end + 1;
        }

        return _session with { Readings = _measured.Readings };
    }

    /// <summary>
    /// The text with nothing but line ends before a place and in lines of comment, so that what stands after it stays in its place.
    /// </summary>
    private string Blanked(int from)
    {
        var before = text.AsSpan(0, from).ToArray().Where(static character => character is '\r' or '\n');
        var kept = string.Concat(before);
        var rest = text[from..].Split('\n').Select(static line => line.TrimStart().StartsWith('#') ? "" : line);
        return kept + string.Join('\n', rest);
    }
}
