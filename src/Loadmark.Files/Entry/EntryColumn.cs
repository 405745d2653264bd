namespace Loadmark.Files.Entry;

/// <summary>What a column of a table became.</summary>
/// <param name="Index">Which column, from 0.</param>
/// <param name="Name">The column's name in the first row; null when the table has no such row.</param>
/// <param name="Becomes">The key of the rig file that it fills, or <c>tag</c> or <c>supply</c>; null when it is left out.</param>
/// <param name="Unit">The unit of its bare numbers; null when it has none.</param>
/// <param name="Because">How it was recognised or why it is left out, for people.</param>
public sealed record EntryColumn(int Index, string? Name, string? Becomes, string? Unit, string Because);
