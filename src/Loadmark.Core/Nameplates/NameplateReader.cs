using Loadmark.Core.Nameplates.Parsing;

namespace Loadmark.Core.Nameplates;

/// <summary>Reads the text of nameplates: lexes it, splits it into phrases, and puts the phrases together.</summary>
public static class NameplateReader
{
    /// <summary>The most characters that are read. No label has as many; what lies beyond comes back as unread.</summary>
    public const int Longest = 4096;

    /// <summary>The longest label whose working space is taken from the stack: about 20 kB.</summary>
    private const int MostOnStack = 256;

    /// <summary>Reads a nameplate. Never throws on any text; takes time in proportion to its length, up to <see cref="Longest"/>.</summary>
    /// <param name="text">The label's text, as printed or typed.</param>
    /// <returns>What was read and what was not.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public static Nameplate Read(string text) => Read(text, null);

    /// <summary>
    /// Reads a nameplate and tells its pieces: every token that was read, or that by itself says nothing (punctuation, words such as
    /// "power"), unless it lies within an unread piece. With the unread pieces they cover every character but white space; for tests.
    /// </summary>
    internal static Nameplate Read(string text, List<Place>? pieces)
    {
        ArgumentNullException.ThrowIfNull(text);

        var length = LengthToRead(text);
        if (length == 0)
            return new Nameplate(text);

        // Labels are short: their working space is on the stack, and nothing is left for the collector.
        var onStack = length <= MostOnStack;
        var folded = onStack ? stackalloc char[length] : new char[length];
        var lower = onStack ? stackalloc char[length] : new char[length];
        var space = onStack ? stackalloc Token[length] : new Token[length];
        Folding.Fold(text.AsSpan(0, length), folded, lower);

        var tokens = space[..new LabelLexer(folded, lower, space).Lex()];
        tokens = tokens[..TokenContext.Resolve(tokens, folded, lower)];

        var phrases = onStack ? stackalloc Phrase[tokens.Length] : new Phrase[tokens.Length];
        phrases = phrases[..PhraseGrammar.Split(Spell(tokens, lower), phrases)];

        var nameplate = new LabelParser(text, tokens, phrases).Read(RestOf(text, length));
        if (pieces is not null)
            AddPieces(pieces, nameplate, tokens);
        return nameplate;
    }

    private static void AddPieces(List<Place> pieces, Nameplate nameplate, ReadOnlySpan<Token> tokens)
    {
        var unread = 0;
        foreach (var token in tokens)
        {
            while (unread < nameplate.Unread.Length && nameplate.Unread[unread].Place.End <= token.Start)
                unread++;
            var isWithin = unread < nameplate.Unread.Length && nameplate.Unread[unread].Place.Start <= token.Start;
            if (!isWithin && (token.Understood || Sign.IsPlain(token.Sign)))
                pieces.Add(new Place(token.Start, token.Length));
        }
    }

    /// <summary>One sign for each token. The letters are not needed any more and lend their space.</summary>
    private static ReadOnlySpan<char> Spell(ReadOnlySpan<Token> tokens, Span<char> space)
    {
        for (var i = 0; i < tokens.Length; i++)
            space[i] = tokens[i].Sign;
        return space[..tokens.Length];
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
