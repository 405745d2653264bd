using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Parsing;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Library;

/// <summary>What a rig file says of one piece of gear, without its tag: the text that a library keeps.</summary>
public static class GearText
{
    private static readonly NodeText OneLine = new(isJson: false, isSpaced: true, "\n");

    /// <summary>The text of a piece, in the program's own spelling; reading it gives the same piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <exception cref="ArgumentException">It has a figure or a text that no file holds.</exception>
    public static string Write(GearPiece piece)
    {
        var yaml = new YamlWriter();
        yaml.BeginGroup();
        WriteKeys(yaml, piece);
        yaml.EndGroup();
        var text = yaml.Finish();
        return Read(piece.Kind, piece.Tag, text).Piece == piece
            ? text
            : throw new ArgumentException(
                $"{piece.Tag} cannot be kept: some of what is said of it would read back differently.", nameof(piece));
    }

    /// <summary>Reads such a text.</summary>
    /// <param name="kind">What sort of thing it is of.</param>
    /// <param name="tag">Its tag.</param>
    /// <param name="text">The text.</param>
    public static GearPieceResult Read(GearKind kind, string tag, string text)
    {
        ArgumentNullException.ThrowIfNull(tag);
        ArgumentNullException.ThrowIfNull(text);
        var errors = new ErrorList(tag);
        if (text.Length > RigFileReader.MostBytes)
            errors.Add(null, RigFile.TooLarge("piece of gear"));
        else if (ControlCharacters.FirstIn(text) is >= 0 and var control)
            errors.Add(Spot.At(text, control), $"the character U+{(int)text[control]:X4} has no place in a text");
        else if (TreeReader.Read(text, errors) is { } node
            && ReadNode(kind, new ScalarNode(Spot.Start, tag, isPlain: false), node, errors) is { } piece && !errors.Any)
            return new GearPieceResult(piece, []);
        return new GearPieceResult(null, errors.ToArray());
    }

    /// <summary>What is said of a piece, one thing at a time, in the order of a rig file.</summary>
    /// <param name="piece">The piece.</param>
    public static ImmutableArray<GearField> FieldsOf(GearPiece piece)
    {
        var fields = ImmutableArray.CreateBuilder<GearField>();
        foreach (var (key, value) in TreeOf(piece).Entries)
        {
            if (value is MappingNode parts)
                fields.AddRange(
                    parts.Entries.Select(part => new GearField($"{key.Value.TrimEnd('s')} {part.Key.Value}", TextOf(part.Value))));
            else
                fields.Add(new GearField(key.Value, TextOf(value)));
        }

        return fields.DrainToImmutable();
    }

    /// <summary>What is said otherwise of one piece than of another of the kind.</summary>
    /// <param name="before">The one.</param>
    /// <param name="after">The other.</param>
    public static ImmutableArray<GearDifference> Differences(GearPiece before, GearPiece after)
    {
        var (old, now) = (FieldsOf(before), FieldsOf(after));
        return
        [
            .. now.Select(field => new GearDifference(field.Key, old.FirstOrDefault(one => one.Key == field.Key)?.Value, field.Value))
            .Where(static one => one.Before != one.After),
            .. old.Where(field => now.All(one => one.Key != field.Key))
            .Select(static field => new GearDifference(field.Key, field.Value, null)),
        ];
    }

    /// <summary>
    /// One piece with what another says of it instead: what the other says nothing of stays. Outlets are taken together, and so are banks.
    /// </summary>
    /// <param name="under">The piece.</param>
    /// <param name="over">The other, of the same kind.</param>
    /// <returns>The piece with its own tag; or what does not go together.</returns>
    public static GearPieceResult Merge(GearPiece under, GearPiece over)
    {
        ArgumentNullException.ThrowIfNull(under);
        ArgumentNullException.ThrowIfNull(over);
        if (under.Kind != over.Kind)
            throw new ArgumentException("The pieces are of different kinds.", nameof(over));
        var (keys, said) = (TreeOf(under), TreeOf(over));
        foreach (var (key, value) in said.Entries)
        {
            var at = keys.Entries.FindIndex(entry => entry.Key.Value == key.Value);
            if (at < 0)
                keys.Entries.Add((key, value));
            else
                keys.Entries[at] = (key, value);
        }

        var errors = new ErrorList(under.Tag);
        var piece = ReadNode(under.Kind, new ScalarNode(Spot.Start, under.Tag, isPlain: false), keys, errors);
        return errors.Any ? new GearPieceResult(null, errors.ToArray()) : new GearPieceResult(piece, []);
    }

    /// <summary>Reads a piece from a tree; null, with an error, when it is no group of keys.</summary>
    internal static GearPiece? ReadNode(GearKind kind, ScalarNode id, Node node, ErrorList errors)
    {
        switch (kind)
        {
            case GearKind.Load:
                return LoadReader.Read(id, node, errors) is { } load ? GearPiece.Of(load) : null;
            case GearKind.Supply:
                return SupplyReader.Read(id, node, new OutletAllowance(), errors) is { } supply ? GearPiece.Of(supply) : null;
            default:
                return LeadReader.Read(id, node, errors) is { } lead ? GearPiece.Of(lead) : null;
        }
    }

    /// <summary>Writes the keys of a piece, without a group round them.</summary>
    internal static void WriteKeys(YamlWriter yaml, GearPiece piece)
    {
        if (piece.Load is { } load)
            yaml.Fields(load, LoadKeys.Table);
        else if (piece.Supply is { } supply)
            SupplyWriter.WriteKeys(yaml, supply);
        else
            yaml.Fields(piece.Lead!, LeadKeys.Table);
    }

    /// <summary>The keys of a piece as a tree.</summary>
    internal static MappingNode TreeOf(GearPiece piece) => TreeBuilder.TreeOf(yaml =>
    {
        yaml.BeginGroup();
        WriteKeys(yaml, piece);
        yaml.EndGroup();
    });

    private static string TextOf(Node value) => value is ScalarNode scalar ? scalar.Value.ReplaceLineEndings(" ") : OneLine.Inline(value);
}
