namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// The grammar of a label's phrases, over the alphabet of <see cref="Sign"/>: recursive descent with backtracking. It
/// tells where a phrase begins and ends; the tokens in it carry the values. Each rule is written above its method
/// (<c>?</c> optional, <c>*</c> repeated, <c>!</c> not followed by), moves on when it holds and stays put when it does not.
/// Every repetition is bounded, which keeps reading linear in the label's length.
/// Why it is not built from a parser library: docs/decisions/0003-reading-nameplates.md.
/// </summary>
internal ref partial struct PhraseGrammar
{
    /// <summary>The most alternatives of one figure ("9/12/15/18/24 V"); labels have up to seven.</summary>
    private const int MostAlternatives = 12;

    private const int MostWords = 4;

    /// <summary>The most outlets in one list of ids.</summary>
    private const int MostIds = 16;

    private readonly ReadOnlySpan<char> _signs;
    private int _at;

    private PhraseGrammar(ReadOnlySpan<char> signs) => _signs = signs;

    private readonly char Current => _at < _signs.Length ? _signs[_at] : '\0';

    /// <summary>Splits a label into phrases.</summary>
    /// <param name="signs">One sign for each token.</param>
    /// <param name="phrases">Room for as many phrases as there are tokens.</param>
    /// <returns>How many phrases there are; together they cover every token once.</returns>
    public static int Split(ReadOnlySpan<char> signs, Span<Phrase> phrases)
    {
        var grammar = new PhraseGrammar(signs);
        var count = 0;
        while (grammar._at < signs.Length)
        {
            var start = grammar._at;
            var kind = grammar.Phrase();
            if (kind == '\0')
            {
                kind = signs[start];
                grammar._at = start + 1;
            }

            phrases[count++] = new Phrase(kind, start, grammar._at);
        }

        return count;
    }

    /// <summary>The phrase that begins here; '\0' when none does.</summary>
    private char Phrase()
    {
        char kind;
        switch (Current)
        {
            case Sign.Number:
                return (kind = PlugSize()) != '\0' || (kind = Figure()) != '\0' ? kind : Diameter();
            case Sign.Connector or Sign.Jack:
                return (kind = ConnectorFirst()) != '\0' ? kind : '\0';
            case Sign.Centre or Sign.Pin or Sign.Sleeve or Sign.Barrel:
                return (kind = ConnectorFirst()) != '\0' ? kind : Contact() && SignAfter() ? PhraseKind.ContactSign : '\0';
            case Sign.Positive or Sign.Negative or Sign.Plus or Sign.Dash:
                return SignThenContact() ? PhraseKind.SignContact : SignThenGround() ? PhraseKind.GroundSign : '\0';
            case Sign.Ground:
                return GroundThenSign() ? PhraseKind.GroundSign : '\0';
            case Sign.Diameter:
                return PlugSize();
            case Sign.Between:
                return Between();
            case Sign.Input or Sign.Output or Sign.Mains:
                _at++;
                OutletIds();
                return PhraseKind.Side;
            case Sign.Ids:
                OutletIds();
                return PhraseKind.OutletIds;
            case Sign.Count:
                _at++;
                Take(Sign.Times);
                return PhraseKind.OutletCount;
            case Sign.Times:
                return Take(Sign.Times) && Take(Sign.Count) ? PhraseKind.OutletCount : Unread();
            case Sign.Alternating:
                return Title() ? PhraseKind.Title : '\0';
            default:
                return '\0';
        }
    }

    private bool Take(char sign)
    {
        if (Current != sign)
            return false;
        _at++;
        return true;
    }

    private bool TakeAny(ReadOnlySpan<char> signs)
    {
        if (_at >= _signs.Length || !signs.Contains(_signs[_at]))
            return false;
        _at++;
        return true;
    }

    private void TakeUpTo(int most, ReadOnlySpan<char> signs)
    {
        while (most-- > 0 && TakeAny(signs))
        {
        }
    }

    private bool Back(int start)
    {
        _at = start;
        return false;
    }

    /// <summary>ids = name? point* (id (("-" | "/" | "," | "and" | "to" | "or" | "+") point* id)*)? ":"?</summary>
    private void OutletIds()
    {
        var start = _at;
        TakeUpTo(MostWords, [Sign.Name, Sign.Point]);
        if (!Take(Sign.Ids))
        {
            _at = start;
            return;
        }

        for (var i = 0; i < MostIds; i++)
        {
            var end = _at;
            if (TakeAny([Sign.Dash, Sign.Tilde, Sign.Dots, Sign.Slash, Sign.Comma, Sign.And, Sign.To, Sign.Or, Sign.Plus]))
            {
                TakeUpTo(MostWords, [Sign.Point, Sign.Name]);
                if (Take(Sign.Ids))
                    continue;
            }

            _at = end;
            break;
        }

        Take(Sign.Colon);
    }

    /// <summary>Nothing begins at the token tried last.</summary>
    private char Unread()
    {
        _at--;
        return '\0';
    }

    /// <summary>title = a.c. ("/" | "-" | "to" | "and" | "or")? d.c.? word* adaptor</summary>
    private bool Title()
    {
        var start = _at++;
        TakeAny([Sign.Slash, Sign.Dash, Sign.To, Sign.And, Sign.Or]);
        Take(Sign.Direct);
        TakeUpTo(MostWords, [Sign.Quiet, Sign.Filler]);
        return Take(Sign.Adaptor) || Back(start);
    }
}
