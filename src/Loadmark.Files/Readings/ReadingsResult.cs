using System.Collections.Immutable;
using Loadmark.Core.Acceptance;
using Loadmark.Files.Errors;

namespace Loadmark.Files.Readings;

/// <summary>What came of reading readings: the session that they tell of, or the errors that are in the way.</summary>
/// <param name="Session">Who measured what; null exactly when there is any error.</param>
/// <param name="Errors">What is wrong, from the top of the file down.</param>
public sealed record ReadingsResult(BenchSession? Session, ImmutableArray<FileError> Errors);
