using System.Collections.Immutable;

namespace Loadmark.Planning.Cutting;

/// <summary>Pieces of one length, of which any may stand for any other.</summary>
/// <param name="Size">What each takes from a reel with the cut behind it, in micrometres.</param>
/// <param name="Pieces">The pieces, in the order in which they were given.</param>
internal sealed record PieceKind(long Size, ImmutableArray<CutPiece> Pieces)
{
    /// <summary>How many there are.</summary>
    public int Count => Pieces.Length;
}
