namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Follows "not", "never", "except" through a label: what they govern says what the thing is not. Where their reach ends
/// is a guess, made so that a figure is rather left unread than taken for the thing's own.
/// </summary>
internal record struct Negation
{
    private bool _hit;
    private char _last;
    private char _pending;

    /// <summary>Whether the phrase at hand is governed.</summary>
    public bool Governs { get; private set; }

    /// <summary>Takes notice of the next phrase.</summary>
    /// <param name="phrases">All phrases.</param>
    /// <param name="index">Which one.</param>
    /// <param name="tokens">All tokens.</param>
    /// <param name="text">The label as given.</param>
    /// <returns>Whether the phrase says what the thing is not.</returns>
    public bool Takes(ReadOnlySpan<Phrase> phrases, int index, ReadOnlySpan<Token> tokens, ReadOnlySpan<char> text)
    {
        var phrase = phrases[index];
        var token = tokens[phrase.From];
        if (phrase.Kind == Sign.Not)
        {
            var after = phrase.To < tokens.Length ? text[tokens[phrase.To].Start..tokens[phrase.To].End] : [];
            Governs = !IsOfItself(after) && !(phrase.To < tokens.Length && tokens[phrase.To].Sign == Sign.Regulated);
            _hit = false;
            _pending = '\0';
            return false;
        }

        if (!Governs)
            return IsClaim(phrase.Kind) && IsDeniedAfter(phrases, index, tokens, text);
        if (_pending != '\0' && phrase.Kind != _pending && !Sign.IsPlain(phrase.Kind))
        {
            // "not centre positive, 100 mA": the list of what it is not is over.
            Governs = false;
            return false;
        }

        if (IsClaim(phrase.Kind))
        {
            _hit = true;
            _last = phrase.Kind;
            _pending = '\0';
            return true;
        }

        var word = index > 0 ? text[tokens[phrases[index - 1].From].Start..tokens[phrases[index - 1].From].End] : [];
        switch (phrase.Kind)
        {
            case Sign.Semicolon or Sign.Close or PhraseKind.Side when phrase.Kind != PhraseKind.Side || _hit:
                Governs = false;
                break;
            case Sign.Point when text[token.Start] is '.' or '!':
                Governs = false;
                break;
            case Sign.NewLine or Sign.Colon when !_hit:
                Governs = phrase.Kind == Sign.Colon || WantsObject(word);
                break;
            case Sign.Comma when !_hit:
                Governs = false;
                break;
            case Sign.NewLine or Sign.Open:
                Governs = !_hit;
                break;
            case Sign.Comma:
                _pending = _last;
                break;
            case Sign.Word when !_hit && IsWayOfJoining(text[token.Start..token.End]):
                // "do not connect outputs in series 9 V": how outlets are joined is denied, unless it says with what.
                var after = phrase.To < tokens.Length ? text[tokens[phrase.To].Start..tokens[phrase.To].End] : [];
                Governs = Is(after, "with") || Is(after, "to") || Is(after, "and") || Is(after, "or");
                break;
            default:
                break;
        }

        return false;
    }

    /// <summary>"18 V is not allowed"</summary>
    private static bool IsDeniedAfter(ReadOnlySpan<Phrase> phrases, int index, ReadOnlySpan<Token> tokens, ReadOnlySpan<char> text)
    {
        for (var i = index + 1; i + 1 < phrases.Length && i < index + 4; i++)
        {
            if (phrases[i].Kind == Sign.Not)
            {
                var next = tokens[phrases[i + 1].From];
                var word = text[next.Start..next.End];
                return Is(word, "allowed") || Is(word, "permitted") || Is(word, "supported") || Is(word, "recommended")
                    || Is(word, "suitable");
            }

            if (phrases[i].Kind is not (Sign.Filler or Sign.Quiet or Sign.Direct or Sign.Alternating or Sign.Open))
                return false;
        }

        return false;
    }

    /// <summary>Whether a phrase claims something of the thing.</summary>
    private static bool IsClaim(char kind) =>
        kind is PhraseKind.Volts or PhraseKind.Amps or PhraseKind.Watts or PhraseKind.Hertz or PhraseKind.Title
        or PhraseKind.ContactSign or PhraseKind.SignContact or PhraseKind.PlugSize or PhraseKind.InchJack or PhraseKind.Diameter
        or Sign.Drawing or Sign.Direct or Sign.Alternating or Sign.Tilde or Sign.Regulated or Sign.Unregulated or Sign.Linear;

    /// <summary>"not included", "do not open", "do not short": nothing electrical is denied. "not less than" sets a bound.</summary>
    private static bool IsOfItself(ReadOnlySpan<char> word) =>
        Is(word, "included") || Is(word, "supplied") || Is(word, "provided") || Is(word, "isolated")
        || Is(word, "open") || Is(word, "expose") || Is(word, "short") || Is(word, "join") || Is(word, "less") || Is(word, "more");

    private static bool IsWayOfJoining(ReadOnlySpan<char> word) => Is(word, "series") || Is(word, "parallel") || Is(word, "together");

    private static bool WantsObject(ReadOnlySpan<char> word) =>
        Is(word, "use") || Is(word, "exceed") || Is(word, "apply") || Is(word, "connect")
        || Is(word, "with") || Is(word, "to") || Is(word, "than") || Is(word, "over") || Is(word, "above");

    private static bool Is(ReadOnlySpan<char> word, string other) => word.Equals(other, StringComparison.OrdinalIgnoreCase);
}
