using Loadmark.Files.Entry;

namespace Loadmark.Workshop.TypedInput;

/// <summary>One line of what was typed, with what it comes to.</summary>
/// <param name="Number">Which line, from 1.</param>
/// <param name="Row">What would be taken of it, with what was answered about it; null where nothing stands there.</param>
/// <param name="Typed">The same as it was read, before any answer; null where nothing stands there.</param>
public sealed record EntryLine(int Number, EntryRow? Row, EntryRow? Typed);
