using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;

namespace Loadmark.Files.Library;

/// <summary>One piece of gear in a file of gear, or what stands there in its place. Exactly one of piece and refusal is there.</summary>
public sealed record GearFileRow
{
    /// <summary>The line that the piece begins on, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>What sort of thing the piece is, or would be; null when that cannot be told.</summary>
    public GearKind? Kind { get; init; }

    /// <summary>The tag as typed; empty when there is none.</summary>
    public required string Tag { get; init; }

    /// <summary>The piece; null when it is refused.</summary>
    public GearPiece? Piece { get; init; }

    /// <summary>The words that the piece is filed under; null when the file says nothing of that.</summary>
    public ValueList<string>? Words { get; init; }

    /// <summary>Why the piece is not taken; null when it is.</summary>
    public EntryRefusal? Refusal { get; init; }
}
