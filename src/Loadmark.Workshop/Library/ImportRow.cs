using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;

namespace Loadmark.Workshop.Library;

/// <summary>One piece of gear that is to be taken into the library.</summary>
public sealed record ImportRow
{
    /// <summary>The line of the file, from 1; 0 where it comes from a rig.</summary>
    public int Line { get; init; }

    /// <summary>What sort of thing the piece is; null when that cannot be told.</summary>
    public GearKind? Kind { get; init; }

    /// <summary>The piece's tag as typed; empty when it has none.</summary>
    public required string Tag { get; init; }

    /// <summary>What the piece is to the library.</summary>
    public required ImportState State { get; init; }

    /// <summary>What the library would say of the piece; null when it is refused.</summary>
    public GearPiece? Piece { get; init; }

    /// <summary>The words that the library would file it under.</summary>
    public ValueList<string> Words { get; init; }

    /// <summary>The library's piece of that tag; null when there is none.</summary>
    public LibraryGear? Present { get; init; }

    /// <summary>
    /// What the library would say otherwise than now; empty when it is new. What the file says nothing of stays as it is.
    /// </summary>
    public ImmutableArray<GearDifference> Differences { get; init; } = [];

    /// <summary>Why the piece cannot be taken; null when it can.</summary>
    public string? Refusal { get; init; }
}
