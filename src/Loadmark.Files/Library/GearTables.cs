using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Files.Entry;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Library;

/// <summary>Reads tables of loads, of supplies or of leads, which the names of their columns tell apart.</summary>
internal static class GearTables
{
    private static readonly TableLimits Limits = new(GearFileReader.MostLines, GearFileReader.MostBytes);

    /// <summary>The rows of a table.</summary>
    public static GearFileResult Read(string text, ErrorList errors)
    {
        var end = text.AsSpan().IndexOfAny('\r', '\n');
        var names = (end < 0 ? text : text[..end]).ToLowerInvariant().Split([',', ';', '\t'], StringSplitOptions.TrimEntries)
            .Select(static name => name.Trim('"')).ToList();
        var (kind, reading) = names.Contains("supply") ? (GearKind.Supply, SupplyTable.Read(text, [], Limits))
            : names.Contains("lead") ? (GearKind.Lead, null)
            : (GearKind.Load, LoadTable.Read(text, new EntryTarget(EntryKind.Loads, []), Limits));
        var rows = new List<GearFileRow>();
        if (reading is null)
            reading = LeadTable.Read(text, rows, Limits);
        else
            rows.AddRange(reading.Rows.Select(row => RowOf(kind, row)));
        if (reading.Problem is { } problem)
            errors.Add(Spot.Start, problem);
        return new GearFileResult(errors.Any ? [] : [.. rows], errors.ToArray(), LeftOut(reading));
    }

    private static ImmutableArray<string> LeftOut(EntryResult reading) =>
        [.. reading.Columns.Where(static column => column.Becomes is null && column.Name is not null)
            .Select(static column => $"{ErrorList.Quote(column.Name!)}: {column.Because}")];

    private static GearFileRow RowOf(GearKind kind, EntryRow row)
    {
        var piece = row.Load is { } load ? GearPiece.Of(load) : row.Supply is { } supply ? GearPiece.Of(supply) : null;
        var found = new GearFileRow
        {
            Line = row.Line,
            Kind = kind,
            Tag = piece?.Tag ?? "",
            Words = row.Words is { } words ? GearTrees.Split(words) : null,
        };
        if (row.IsIdProposed)
            return found with { Tag = "", Refusal = new EntryRefusal("it has no tag", "a tag such as delay-2") };
        return piece is null
            ? found with { Refusal = row.Refusal ?? new EntryRefusal("it is no piece of gear", null) }
            : found with { Piece = piece };
    }
}
