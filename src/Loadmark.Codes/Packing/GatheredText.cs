using System.Collections.Immutable;

namespace Loadmark.Codes.Packing;

/// <summary>What was found of one text.</summary>
/// <param name="Digest">What tells the text from others.</param>
/// <param name="Count">How many codes hold it.</param>
/// <param name="Found">The numbers of those that were found, in order.</param>
/// <param name="Text">The text; null as long as codes are missing, or where they do not fit together.</param>
public sealed record GatheredText(string Digest, int Count, ImmutableArray<int> Found, string? Text)
{
    /// <summary>Whether all codes were found.</summary>
    public bool IsWhole => Found.Length == Count;

    /// <summary>The numbers of the codes that were not found.</summary>
    public IEnumerable<int> Missing => Enumerable.Range(1, Count).Except(Found);
}
