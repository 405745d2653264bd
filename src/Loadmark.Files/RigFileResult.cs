using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;

namespace Loadmark.Files;

/// <summary>What came of reading a rig file: a rig, or the errors that are in the way.</summary>
/// <param name="Rig">The rig; null exactly when there is any error.</param>
/// <param name="Errors">
/// What is wrong, from the top of the file down: at most <see cref="RigFileReader.MostErrors"/>, and then one that says how many more.
/// </param>
public sealed record RigFileResult(Rig? Rig, ImmutableArray<FileError> Errors);
