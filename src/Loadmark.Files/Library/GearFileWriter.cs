using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Library;

/// <summary>Writes files of gear, which read back as the same.</summary>
public static class GearFileWriter
{
    /// <summary>Writes gear as YAML: the sections of a rig file, and the words that each piece is filed under.</summary>
    /// <param name="gear">The pieces, each with its words.</param>
    /// <exception cref="ArgumentException">A piece has a figure that no text reads back as.</exception>
    public static string WriteYaml(IReadOnlyCollection<(GearPiece Piece, ValueList<string> Words)> gear)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var yaml = new YamlWriter();
        yaml.BeginGroup();
        foreach (var (kind, section) in (ReadOnlySpan<(GearKind, string)>)
        [
            (GearKind.Load, "loads"),
            (GearKind.Supply, "supplies"),
            (GearKind.Lead, "leads"),
        ])
        {
            var pieces = gear.Where(one => one.Piece.Kind == kind).ToList();
            if (pieces.Count == 0)
                continue;
            yaml.Text(section);
            yaml.BeginGroup();
            foreach (var (piece, words) in pieces)
                WritePiece(yaml, piece, words);
            yaml.EndGroup();
        }

        yaml.EndGroup();
        return yaml.Finish();
    }

    /// <summary>
    /// Writes the gear of one kind as a table. A cell that a spreadsheet would run as a formula has an apostrophe before it, which reading
    /// takes off (OWASP, "CSV Injection").
    /// </summary>
    /// <param name="kind">The kind; other gear is left out.</param>
    /// <param name="gear">The pieces, each with its words.</param>
    /// <param name="separator">A comma, a semicolon or a tab.</param>
    /// <exception cref="ArgumentException">Another separator, or a piece has a figure that no text reads back as.</exception>
    public static string WriteTable(
        GearKind kind, IReadOnlyCollection<(GearPiece Piece, ValueList<string> Words)> gear, char separator = ',')
    {
        ArgumentNullException.ThrowIfNull(gear);
        var pieces = gear.Where(one => one.Piece.Kind == kind).ToList();
        var words = pieces.ToDictionary(
            static one => one.Piece.Tag, static one => string.Join("; ", one.Words.Items), StringComparer.Ordinal);
        return kind switch
        {
            GearKind.Load => LoadTable.Write(pieces.Select(static one => one.Piece.Load!), separator, load => words[load.Id]),
            GearKind.Supply => SupplyTable.Write(pieces.Select(static one => one.Piece.Supply!), separator, supply => words[supply.Id]),
            _ => LeadTable.Write(pieces.Select(static one => one.Piece.Lead!), separator, lead => words[lead.Id]),
        };
    }

    private static void WritePiece(YamlWriter yaml, GearPiece piece, ValueList<string> words)
    {
        yaml.Text(piece.Tag);
        yaml.BeginGroup();
        GearText.WriteKeys(yaml, piece);
        if (words.Count > 0)
        {
            yaml.Text(GearTrees.Words);
            yaml.BeginList(flow: true);
            foreach (var word in words)
                yaml.Text(word);
            yaml.EndList();
        }

        yaml.EndGroup();
    }
}
