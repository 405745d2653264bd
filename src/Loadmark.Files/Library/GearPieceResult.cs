using System.Collections.Immutable;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Library;

/// <summary>What came of reading what is said of a piece of gear.</summary>
/// <param name="Piece">The piece; null exactly when there is any error.</param>
/// <param name="Errors">What is wrong.</param>
public sealed record GearPieceResult(GearPiece? Piece, ImmutableArray<FileError> Errors);
