using Loadmark.Core.Rigs;
using Loadmark.Files.Library;
using Loadmark.Storage.Gear;

namespace Loadmark.Workshop.Library;

/// <summary>Makes of a piece of gear what is kept of it.</summary>
public static class GearContents
{
    /// <summary>What is kept of a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="words">The words that it is filed under.</param>
    /// <exception cref="ArgumentException">The piece has a figure or a text that no file holds.</exception>
    public static GearContent Of(GearPiece piece, ValueList<string> words = default)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return new GearContent
        {
            Kind = piece.Kind,
            Tag = piece.Tag,
            Name = piece.Name,
            Label = piece.Label,
            Words = words,
            Text = GearText.Write(piece),
        };
    }
}
