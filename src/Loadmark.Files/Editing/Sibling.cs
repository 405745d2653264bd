using Loadmark.Files.Trees;

namespace Loadmark.Files.Editing;

/// <summary>One of the values that stand side by side in a group or list, with the place it takes in the text.</summary>
/// <param name="Key">The value's key; null in a list.</param>
/// <param name="Value">The value itself.</param>
/// <param name="Start">Index where it begins: of the key, the dash of a list, or the value in brackets; -1 when not found.</param>
/// <param name="End">Index past its last character.</param>
internal sealed record Sibling(ScalarNode? Key, Node Value, int Start, int End);
