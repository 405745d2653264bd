using System.Collections.Immutable;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Gathers what was not understood into pieces that read well: words side by side are one piece.</summary>
internal static class UnreadPieces
{
    /// <summary>The pieces of a label.</summary>
    /// <param name="text">The label.</param>
    /// <param name="tokens">Its tokens, those that were understood marked so.</param>
    /// <param name="rest">What lies beyond the tokens; null when nothing does.</param>
    public static ImmutableArray<Unread> Of(string text, ReadOnlySpan<Token> tokens, Place? rest)
    {
        ImmutableArray<Unread>.Builder? pieces = null;
        var start = -1;
        var end = -1;
        var filler = -1;
        foreach (var token in tokens)
        {
            if (!token.Understood && !Sign.IsPlain(token.Sign))
            {
                if (start < 0)
                    start = filler >= 0 ? filler : token.Start;
                end = token.End;
            }
            else if (!token.Understood && token.Sign == Sign.Filler)
            {
                // "For indoor use only" and "Use only with ..." keep their small words.
                if (start >= 0)
                    end = token.End;
                else if (filler < 0)
                    filler = token.Start;
                continue;
            }
            else if (token.Understood || token.Sign is Sign.NewLine or Sign.Semicolon)
            {
                Close(text, ref pieces, ref start, end);
            }

            filler = -1;
        }

        Close(text, ref pieces, ref start, end);
        if (rest is { } place)
            Close(text, ref pieces, ref place);
        return pieces is null ? [] : pieces.DrainToImmutable();
    }

    private static void Close(string text, ref ImmutableArray<Unread>.Builder? pieces, ref int start, int end)
    {
        if (start < 0)
            return;
        var place = new Place(start, end - start);
        start = -1;
        Close(text, ref pieces, ref place);
    }

    private static void Close(string text, ref ImmutableArray<Unread>.Builder? pieces, ref Place place)
    {
        pieces ??= ImmutableArray.CreateBuilder<Unread>(2);
        pieces.Add(new Unread(place.In(text).ToString(), place));
    }
}
