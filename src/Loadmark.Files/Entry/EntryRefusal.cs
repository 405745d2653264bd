namespace Loadmark.Files.Entry;

/// <summary>Why a line is not taken.</summary>
/// <param name="Because">What is wrong, for people.</param>
/// <param name="Expected">What was expected, as an example; null when nothing particular was.</param>
public sealed record EntryRefusal(string Because, string? Expected);
