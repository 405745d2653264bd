using System.Collections.Immutable;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Library;

/// <summary>What came of reading a file of gear.</summary>
/// <param name="Rows">The pieces from the top down, refused ones too.</param>
/// <param name="Errors">What keeps the file as a whole from being read; empty when nothing does, and then every row is there.</param>
/// <param name="LeftOut">The columns of a table that are not taken, each with why; empty for other files.</param>
public sealed record GearFileResult(ImmutableArray<GearFileRow> Rows, ImmutableArray<FileError> Errors, ImmutableArray<string> LeftOut);
