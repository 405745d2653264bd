using Loadmark.Files.Trees;

namespace Loadmark.Files.Editing;

/// <summary>One of the values that a group or list is to have.</summary>
/// <param name="Source">Which of the old siblings becomes it; -1 when it is new.</param>
/// <param name="Key">The value's key; null in a list, and where the old key stays.</param>
/// <param name="Value">The value itself as the program spells it; null when the old one stays as it is.</param>
/// <param name="Old">The old value as the program spells it; null when there was none.</param>
internal sealed record Wanted(int Source, ScalarNode? Key, Node? Value, Node? Old);
