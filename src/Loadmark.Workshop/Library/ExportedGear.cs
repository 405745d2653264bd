using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;

namespace Loadmark.Workshop.Library;

/// <summary>A file of what the library has.</summary>
/// <param name="Text">The file's text.</param>
/// <param name="Count">How many pieces are in it.</param>
public sealed record ExportedGear(string Text, int Count)
{
    /// <summary>Writes gear of the library as YAML.</summary>
    /// <param name="library">The library. Pieces that this version cannot read are left out.</param>
    /// <param name="kind">Only gear of this kind; null for all.</param>
    public static ExportedGear AsYaml(GearSnapshot library, GearKind? kind)
    {
        ArgumentNullException.ThrowIfNull(library);
        var gear = Of(library, kind);
        return new ExportedGear(GearFileWriter.WriteYaml(gear), gear.Count);
    }

    /// <summary>Writes a table of gear of one kind.</summary>
    /// <param name="library">The library. Pieces that this version cannot read are left out.</param>
    /// <param name="kind">The kind; null for loads.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    public static ExportedGear AsTable(GearSnapshot library, GearKind? kind, char separator = ',')
    {
        ArgumentNullException.ThrowIfNull(library);
        var gear = Of(library, kind ?? GearKind.Load);

        // The mark at the start tells spreadsheets that it is UTF-8.
        return new ExportedGear("\uFEFF" + GearFileWriter.WriteTable(kind ?? GearKind.Load, gear, separator), gear.Count);
    }

    private static List<(GearPiece Piece, ValueList<string> Words)> Of(GearSnapshot library, GearKind? kind) =>
        [.. library.Gear.Where(one => one.Piece is not null && (kind is null || one.Kind == kind))
            .Select(static one => (one.Piece!, one.Stored.Content.Words))];
}
