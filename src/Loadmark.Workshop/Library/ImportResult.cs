using System.Collections.Immutable;

namespace Loadmark.Workshop.Library;

/// <summary>What taking gear into the library did.</summary>
/// <param name="Added">The pieces that are new in the library.</param>
/// <param name="Changed">The pieces of which the library says something else now.</param>
/// <param name="Left">The pieces that differ and were left as they are.</param>
/// <param name="Overtaken">The pieces that were not taken, because somebody else changed the library in between.</param>
public sealed record ImportResult(
    ImmutableArray<ImportRow> Added,
    ImmutableArray<ImportRow> Changed,
    ImmutableArray<ImportRow> Left,
    ImmutableArray<ImportRow> Overtaken);
