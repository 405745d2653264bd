namespace Loadmark.Storage.Copies;

/// <summary>What is in a copy of a database.</summary>
/// <param name="Rigs">How many rigs; removed ones, which are in it too, are not counted.</param>
/// <param name="Gear">How many pieces of gear the library has; removed ones, which are in it too, are not counted.</param>
/// <param name="Unreadable">How many rigs have a text that was damaged before; they are in it as they are.</param>
public sealed record CopyContents(int Rigs, int Gear, int Unreadable);
