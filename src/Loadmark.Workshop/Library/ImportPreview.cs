using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;

namespace Loadmark.Workshop.Library;

/// <summary>What taking gear into the library would do, before anything is done.</summary>
/// <param name="Rows">The pieces, in the order of the file, or of the rig with loads first.</param>
public sealed record ImportPreview(ImmutableArray<ImportRow> Rows)
{
    private const string Words = "words";

    /// <summary>Compares a file of gear with the library.</summary>
    /// <param name="library">The library.</param>
    /// <param name="file">The file's rows.</param>
    public static ImportPreview Of(GearSnapshot library, GearFileResult file)
    {
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(file);
        return new ImportPreview([.. file.Rows.Select(row => row.Piece is { } piece
            ? Compare(library, piece, row.Words, row.Line)
            : new ImportRow
            {
                Line = row.Line,
                Kind = row.Kind,
                Tag = row.Tag,
                State = ImportState.Refused,
                Refusal = row.Refusal!.Because,
            })]);
    }

    /// <summary>
    /// Compares the gear of a rig with the library. What the rig takes from there is left out, unless it says something of its own.
    /// </summary>
    /// <param name="library">The library.</param>
    /// <param name="rig">The rig.</param>
    public static ImportPreview Of(GearSnapshot library, Rig rig)
    {
        ArgumentNullException.ThrowIfNull(library);
        return new ImportPreview([.. GearPiece.AllOf(rig).Select(piece => Compare(library, piece, null, 0))]);
    }

    private static ImportRow Compare(GearSnapshot library, GearPiece piece, ValueList<string>? words, int line)
    {
        var row =
            new ImportRow { Line = line, Kind = piece.Kind, Tag = piece.Tag, State = ImportState.New, Piece = piece, Words = words ?? [] };
        if (library.Find(piece.Kind, piece.Tag) is not { } present)
            return row;

        row = row with { Present = present, Words = words ?? present.Stored.Content.Words };
        if (present.Piece is not { } known)
            return Refuse(row, "what the library says of it cannot be read by this version of the program");
        var reading = GearText.Merge(known, piece);
        if (reading.Piece is not { } merged)
            return Refuse(row, reading.Errors[0].Message);
        var differences = GearText.Differences(known, merged);
        if (row.Words != present.Stored.Content.Words)
            differences = differences.Add(new GearDifference(Words, Show(present.Stored.Content.Words), Show(row.Words)));
        return row with
        {
            Piece = merged,
            Differences = differences,
            State = differences.Length == 0 ? ImportState.Same : ImportState.Differs,
        };

        static ImportRow Refuse(ImportRow row, string because) => row with { State = ImportState.Refused, Piece = null, Refusal = because };

        static string? Show(ValueList<string> words) => words.Count == 0 ? null : string.Join(", ", words.Items);
    }
}
