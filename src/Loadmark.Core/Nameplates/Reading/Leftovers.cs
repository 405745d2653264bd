using System.Collections.Immutable;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Gathers what nothing understood into pieces a person can read.</summary>
internal static class Leftovers
{
    /// <summary>
    /// Words, numbers and odd signs that were not taken; neighbours with only white space or punctuation between them make
    /// one piece. Punctuation alone is nothing to report.
    /// </summary>
    public static ImmutableArray<Unread> Of(string text, TokenList tokens, int length)
    {
        ImmutableArray<Unread>.Builder? pieces = null;
        var index = 0;
        while (index < tokens.Count)
        {
            if (!IsLeft(tokens, index))
            {
                index++;
                continue;
            }

            var first = index;
            var last = index;
            for (index++; index < tokens.Count && !tokens[index].IsTaken; index++)
            {
                if (tokens.Kind(index) is TokenKind.LineEnd or TokenKind.Semicolon)
                    break;
                if (IsLeft(tokens, index))
                    last = index;
            }

            // Brackets and stops that belong to the piece go with it: "(c) 2024", "No.".
            Add(ref pieces, text, tokens.Place(first, last + 1));
        }

        if (length < text.Length)
            Add(ref pieces, text, new Place(length, text.Length - length));
        return pieces?.ToImmutable() ?? [];
    }

    private static void Add(ref ImmutableArray<Unread>.Builder? pieces, string text, Place place)
    {
        pieces ??= ImmutableArray.CreateBuilder<Unread>();
        pieces.Add(new Unread(text.Substring(place.Start, place.Length), place));
    }

    private static bool IsLeft(TokenList tokens, int index) =>
        !tokens[index].IsTaken && tokens.Kind(index) is TokenKind.Word or TokenKind.Number or TokenKind.Junk;
}
