using System.Buffers;

namespace Loadmark.Core.Nameplates;

/// <summary>Reads the text of nameplates: lexes it, splits it into phrases, and puts the phrases together.</summary>
public static class NameplateReader
{
    /// <summary>The most characters that are read. No label has as many; what lies beyond comes back as unread.</summary>
    public const int Longest = 4096;

    /// <summary>Reads a nameplate. Never throws on any text; takes time in proportion to its length, up to <see cref="Longest"/>.</summary>
    /// <param name="text">The label's text, as printed or typed.</param>
    /// <returns>What was read and what was not.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public static Nameplate Read(string text) => Read(text, null);

    /// <summary>Reads a nameplate and tells which tokens became part of the reading; for tests.</summary>
    internal static Nameplate Read(string text, List<Place>? understood)
    {
        ArgumentNullException.ThrowIfNull(text);

        var length = LengthToRead(text);
        if (length == 0 && text.Length == 0)
            return new Nameplate(text);

        var characters = ArrayPool<char>.Shared.Rent(length * 2);
        var tokens = ArrayPool<Token>.Shared.Rent(length);
        var phrases = ArrayPool<Phrase>.Shared.Rent(length);
        try
        {
            var folded = characters.AsSpan(0, length);
            var lower = characters.AsSpan(length, length);
            Folding.Fold(text.AsSpan(0, length), folded, lower);

            var count = new LabelLexer(folded, lower, tokens).Lex();
            count = TokenContext.Settle(tokens.AsSpan(0, count), folded);
            var own = tokens.AsSpan(0, count);

            var split = PhraseGrammar.Split(Spell(own, lower), phrases);
            var nameplate = new LabelReading(own, phrases.AsSpan(0, split)).Read(text, RestOf(text, length));

            if (understood != null)
            {
                foreach (var token in own)
                {
                    if (token.Understood || token.Sign is Sign.Quiet or Sign.Qualifier || Sign.IsPlain(token.Sign))
                        understood.Add(new Place(token.Start, token.Length));
                }
            }

            return nameplate;
        }
        finally
        {
            ArrayPool<char>.Shared.Return(characters);
            ArrayPool<Token>.Shared.Return(tokens);
            ArrayPool<Phrase>.Shared.Return(phrases);
        }
    }

    /// <summary>One sign for each token. The letters are not needed any more and lend their room.</summary>
    private static ReadOnlySpan<char> Spell(ReadOnlySpan<Token> tokens, Span<char> room)
    {
        for (var i = 0; i < tokens.Length; i++)
            room[i] = tokens[i].Sign;
        return room[..tokens.Length];
    }

    private static Place? RestOf(string text, int length)
    {
        while (length < text.Length && char.IsWhiteSpace(text[length]))
            length++;
        return length < text.Length ? new Place(length, text.Length - length) : null;
    }

    /// <summary>All of a text of up to <see cref="Longest"/> characters; of a longer one as much as fits, to the end of a word.</summary>
    private static int LengthToRead(string text)
    {
        if (text.Length <= Longest)
            return text.Length;

        for (var i = Longest; i > Longest / 2; i--)
        {
            if (char.IsWhiteSpace(text[i]))
                return i;
        }

        return char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
    }
}
