namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Finds what a label speaks of in words and drawings that were not understood.</summary>
internal static class Topics
{
    /// <summary>Connectors of pedalboards are thinner than this, in mm.</summary>
    private const decimal ThickestPlug = 6m;

    /// <summary>What one token speaks of, whether it was understood or not.</summary>
    public static LabelTopics Of(Token token) => token.Topic | token.Sign switch
    {
        Sign.Direct or Sign.Alternating => LabelTopics.Form,
        Sign.Drawing => LabelTopics.Polarity,
        Sign.Ground => LabelTopics.Ground,
        Sign.Regulated or Sign.Unregulated => LabelTopics.Regulation,
        _ => LabelTopics.None,
    };

    /// <summary>What the tokens that stayed unread speak of.</summary>
    /// <param name="tokens">All tokens, those that were understood marked so.</param>
    /// <param name="text">The label as given.</param>
    public static LabelTopics Unread(ReadOnlySpan<Token> tokens, ReadOnlySpan<char> text)
    {
        var topics = LabelTopics.None;
        for (var i = 0; i < tokens.Length; i++)
        {
            // A connector that names an output says nothing less of the plug.
            if (tokens[i].Sign == Sign.Ids)
                topics |= tokens[i].Topic;
            else if (!tokens[i].Understood && !IsSilent(tokens[i].Sign))
                topics |= Of(tokens, i, text);
        }

        return topics;
    }

    /// <summary>Whether a token is mere punctuation, of which most tokens are that stay unread.</summary>
    private static bool IsSilent(char sign) =>
        sign is Sign.Comma or Sign.Colon or Sign.Semicolon or Sign.NewLine or Sign.Slash or Sign.Dash or Sign.Point or Sign.Open
            or Sign.Close;

    private static LabelTopics Of(ReadOnlySpan<Token> tokens, int i, ReadOnlySpan<char> text)
    {
        var token = tokens[i];
        var next = i + 1 < tokens.Length ? tokens[i + 1] : default;
        switch (token.Sign)
        {
            // A ground lift or a ground loop is of the audio.
            case Sign.Ground when next.Sign == Sign.Word && Is(text, next, "lift", "loop"):
                return LabelTopics.None;
            case Sign.Positive or Sign.Negative when !Is(text, token, "plus", "pos"):
                return LabelTopics.Polarity;
            case Sign.Word when token.Length == 1 && text[token.Start] is 'C' or 'c'
                && next.Sign is Sign.Dash or Sign.Plus or Sign.Positive or Sign.Negative && !next.Spaced:
                return LabelTopics.Polarity;
            case Sign.Number when next is { Sign: Sign.Millimetre, Understood: false } && token.Value < ThickestPlug
                && !IsDimension(tokens, i):
                return LabelTopics.Plug;

            // "special plug" names a plug; "power plug", "with plug" and "plug in" do not.
            case Sign.Connector when (i > 0 && tokens[i - 1].Sign == Sign.Word && Is(text, token, "plug", "connector"))
                || (next.Sign == Sign.Point && next.Length > 0 && text[next.Start] == '?'):
                return LabelTopics.Plug;
            default:
                return Of(token);
        }
    }

    private static bool IsDimension(ReadOnlySpan<Token> tokens, int i) =>
        (i > 0 && tokens[i - 1].Sign == Sign.Times) || (i + 2 < tokens.Length && tokens[i + 2].Sign == Sign.Times);

    private static bool Is(ReadOnlySpan<char> text, Token token, string word, string other)
    {
        var piece = text[token.Start..token.End];
        return piece.Equals(word, StringComparison.OrdinalIgnoreCase) || piece.Equals(other, StringComparison.OrdinalIgnoreCase);
    }
}
