namespace Loadmark.Core.Nameplates;

/// <summary>Where in a text something stands.</summary>
/// <param name="Start">Index of its first character (UTF-16 code unit), from 0.</param>
/// <param name="Length">How many characters it takes.</param>
public readonly record struct Place(int Start, int Length)
{
    /// <summary>Index just past its last character.</summary>
    public int End => Start + Length;

    /// <summary>The piece of <paramref name="text"/> at this place.</summary>
    public ReadOnlySpan<char> In(string text) => text.AsSpan(Start, Length);

    /// <summary>The smallest place that holds both.</summary>
    public Place Union(Place other)
    {
        var start = Math.Min(Start, other.Start);
        return new Place(start, Math.Max(End, other.End) - start);
    }
}
