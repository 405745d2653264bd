namespace Loadmark.Core.Nameplates;

/// <summary>
/// The grammar of a label's phrases, over the alphabet of <see cref="Sign"/>: recursive descent with backtracking. It
/// tells where a phrase begins and ends; the tokens in it carry the values. Each rule is written above its method
/// (<c>?</c> optional, <c>*</c> repeated, <c>!</c> not followed by), moves on when it holds and stays put when it does not.
/// Every repetition is bounded, which keeps reading linear in the label's length.
/// Why it is not built from a parser library: docs/decisions/0003-reading-nameplates.md.
/// </summary>
internal ref struct PhraseGrammar
{
    /// <summary>The most alternatives of one figure ("9/12/15/18/24 V"); labels have up to seven.</summary>
    private const int MostAlternatives = 12;

    private const int MostWords = 4;

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
                return SignThenContact() ? PhraseKind.SignContact : '\0';
            case Sign.Between:
                return Between();
            case Sign.Input or Sign.Output or Sign.Mains:
                _at++;
                OutletNumbers();
                return PhraseKind.Side;
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

    private static char KindOf(char unit) => unit switch
    {
        Sign.Volt => PhraseKind.Volts,
        Sign.Ampere => PhraseKind.Amps,
        Sign.Watt => PhraseKind.Watts,
        Sign.Hertz => PhraseKind.Hertz,
        _ => '\0',
    };

    /// <summary>range = "-" | ".." | "~" | "to"</summary>
    private bool RangeMark() => TakeAny([Sign.Dash, Sign.Dots, Sign.Tilde, Sign.To]);

    /// <summary>bare = number (range number)?</summary>
    private bool Bare()
    {
        if (!Take(Sign.Number))
            return false;
        var single = _at;
        if (!(RangeMark() && Take(Sign.Number)))
            _at = single;
        return true;
    }

    /// <summary>value = number (unit form?)? range number unit | number unit: 9 V, 9-18 V, 9 VDC to 18 VDC.</summary>
    /// <param name="unit">The unit's sign; '\0' takes any unit of a figure and says which.</param>
    private bool Value(ref char unit)
    {
        var start = _at;
        if (!Take(Sign.Number))
            return false;

        var first = unit;
        if (first == '\0' && KindOf(Current) != '\0')
            first = Current;
        var hasUnit = first != '\0' && Take(first);
        var single = _at;
        if (hasUnit)
            TakeAny([Sign.Direct, Sign.Alternating]);
        if (RangeMark() && Take(Sign.Number))
        {
            var last = first == '\0' && KindOf(Current) != '\0' ? Current : first;
            if (last != '\0' && Take(last))
            {
                unit = last;
                return true;
            }
        }

        if (!hasUnit)
            return Back(start);
        _at = single;
        unit = first;
        return true;
    }

    /// <summary>figure = list? value (separator value)*: 9/12/18 V, 9 V or 12 V, 9, 12 or 18 V.</summary>
    private char Figure()
    {
        var start = _at;
        var unit = '\0';
        if (!(List() && Value(ref unit)))
        {
            _at = start;
            if (!Value(ref unit))
                return '\0';
        }

        for (var i = 0; i < MostAlternatives; i++)
        {
            var end = _at;
            if (!(Separator() && Value(ref unit)))
            {
                _at = end;
                break;
            }
        }

        return KindOf(unit);
    }

    /// <summary>
    /// list = (open | bare ("," bare)* ","? "or") open*. A comma lists bare numbers only where an "or" closes the list:
    /// in "Class 2, 9 V" it does not.
    /// </summary>
    private bool List()
    {
        var start = _at;
        if (!Open() && !(Bare() && ListRest()))
            return Back(start);
        for (var i = 0; i < MostAlternatives && Open(); i++)
        {
        }

        return true;
    }

    private bool ListRest()
    {
        for (var i = 0; i < MostAlternatives; i++)
        {
            var end = _at;
            if (!(Take(Sign.Comma) && Bare()))
            {
                _at = end;
                break;
            }
        }

        Take(Sign.Comma);
        return Take(Sign.Or);
    }

    /// <summary>open = bare ("/" | "or")</summary>
    private bool Open()
    {
        var start = _at;
        return (Bare() && TakeAny([Sign.Slash, Sign.Or])) || Back(start);
    }

    /// <summary>separator = form? ("," "or"? | "/" | "or")</summary>
    private bool Separator()
    {
        TakeAny([Sign.Direct, Sign.Alternating, Sign.Tilde]);
        if (!Take(Sign.Comma))
            return TakeAny([Sign.Slash, Sign.Or]);
        Take(Sign.Or);
        return true;
    }

    /// <summary>between = "between" number unit? "and" number unit</summary>
    private char Between()
    {
        var start = _at++;
        if (Take(Sign.Number))
        {
            if (KindOf(Current) != '\0')
                _at++;
            if (Take(Sign.And) && Take(Sign.Number) && KindOf(Current) is var kind && kind != '\0')
            {
                _at++;
                return kind;
            }
        }

        _at = start;
        return '\0';
    }

    /// <summary>contact = (centre | pin) word* ("/" (centre | pin))? | (sleeve | barrel) word*</summary>
    private bool Contact()
    {
        if (TakeAny([Sign.Centre, Sign.Pin]))
        {
            TakeUpTo(MostWords, [Sign.Pin, Sign.Centre, Sign.Quiet, Sign.Filler, Sign.Connector]);
            var end = _at;
            if (!(Take(Sign.Slash) && TakeAny([Sign.Centre, Sign.Pin])))
                _at = end;
        }
        else if (TakeAny([Sign.Sleeve, Sign.Barrel]))
        {
            TakeUpTo(MostWords, [Sign.Sleeve, Sign.Barrel, Sign.Quiet, Sign.Filler, Sign.Connector]);
        }
        else
        {
            return false;
        }

        return true;
    }

    /// <summary>sign = positive | negative | "+" | "-"</summary>
    private bool AnySign() => TakeAny([Sign.Positive, Sign.Negative, Sign.Plus, Sign.Dash]);

    /// <summary>after = "-" (positive | negative) | sign | (":" | "=" | "(" | "/") (word | "(")? sign</summary>
    private bool SignAfter()
    {
        var start = _at;
        if (Take(Sign.Dash) && TakeAny([Sign.Positive, Sign.Negative]))
            return true;
        _at = start;
        if (AnySign())
            return true;
        if (TakeAny([Sign.Colon, Sign.Direct, Sign.Point, Sign.Open, Sign.Slash]))
        {
            TakeAny([Sign.Quiet, Sign.Filler, Sign.Open]);
            if (AnySign())
                return true;
        }

        return Back(start);
    }

    /// <summary>
    /// signed = sign ("-" | ":")? contact !(after !contact): the sign stands first, unless another one follows that goes
    /// with the contact ("9 V - centre positive").
    /// </summary>
    private bool SignThenContact()
    {
        var start = _at;
        if (!AnySign())
            return false;
        TakeAny([Sign.Dash, Sign.Colon, Sign.Point]);
        if (!Contact())
            return Back(start);

        var end = _at;
        if (SignAfter() && !Contact())
            return Back(start);
        _at = end;
        return true;
    }

    /// <summary>tail = (connector | jack | (pin | barrel) !after)*: a contact that a sign follows begins a polarity.</summary>
    private void ConnectorTail()
    {
        for (var i = 0; i < MostWords; i++)
        {
            if (TakeAny([Sign.Connector, Sign.Jack]))
                continue;
            var end = _at;
            if (!TakeAny([Sign.Pin, Sign.Barrel]) || SignAfter())
            {
                _at = end;
                return;
            }
        }
    }

    /// <summary>connector = word* (":" | "-")? (size | diameter)</summary>
    private char ConnectorFirst()
    {
        var start = _at;
        TakeUpTo(MostWords, [Sign.Connector, Sign.Jack, Sign.Pin, Sign.Barrel, Sign.Centre]);
        TakeAny([Sign.Colon, Sign.Dash]);
        var kind = PlugSize();
        if (kind == '\0')
            kind = Diameter();
        if (kind == '\0')
            _at = start;
        return kind;
    }

    /// <summary>size = (crossed | slashed | inches) tail</summary>
    private char PlugSize()
    {
        var start = _at;
        if (Crossed() || Slashed())
        {
            ConnectorTail();
            return PhraseKind.PlugSize;
        }

        if (Inches())
        {
            ConnectorTail();
            return PhraseKind.InchJack;
        }

        _at = start;
        return '\0';
    }

    /// <summary>crossed = number mm? word? "x" number mm? ("x" number)? mm? word? !unit</summary>
    private bool Crossed()
    {
        var start = _at;
        if (!Take(Sign.Number))
            return false;
        Take(Sign.Millimetre);
        Take(Sign.Quiet);
        if (!(Take(Sign.Times) && Take(Sign.Number)))
            return Back(start);
        Take(Sign.Millimetre);
        var two = _at;
        if (!(Take(Sign.Times) && Take(Sign.Number)))
            _at = two;
        Take(Sign.Millimetre);
        var sized = _at;
        if (!Take(Sign.Quiet) || KindOf(Current) != '\0')
            _at = sized;
        return KindOf(Current) == '\0' || Back(start);
    }

    /// <summary>slashed = number mm? "/" number (mm | !more): without a unit only where nothing goes on.</summary>
    private bool Slashed()
    {
        var start = _at;
        if (Take(Sign.Number))
        {
            Take(Sign.Millimetre);
            if (Take(Sign.Slash) && Take(Sign.Number) && (Take(Sign.Millimetre) || Current is '\0' or Sign.NewLine or Sign.Semicolon or Sign.Connector or Sign.Jack or Sign.Pin or Sign.Barrel))
                return true;
        }

        return Back(start);
    }

    /// <summary>inches = number "/" number inch connector* jack</summary>
    private bool Inches()
    {
        var start = _at;
        if (Take(Sign.Number) && Take(Sign.Slash) && Take(Sign.Number) && Take(Sign.Inch))
        {
            TakeUpTo(MostWords, [Sign.Connector]);
            if (Take(Sign.Jack))
                return true;
        }

        return Back(start);
    }

    /// <summary>diameter = number mm tail</summary>
    private char Diameter()
    {
        var start = _at;
        if (Take(Sign.Number) && Take(Sign.Millimetre))
        {
            ConnectorTail();
            return PhraseKind.Diameter;
        }

        _at = start;
        return '\0';
    }

    /// <summary>outlets = number (("-" | "/" | "," | "and" | "to" | "or") number)*, where a colon or a figure follows.</summary>
    private void OutletNumbers()
    {
        var start = _at;
        if (!Take(Sign.Number))
            return;
        for (var i = 0; i < MostAlternatives; i++)
        {
            var end = _at;
            if (!(TakeAny([Sign.Dash, Sign.Slash, Sign.Comma, Sign.And, Sign.To, Sign.Or]) && Take(Sign.Number)))
            {
                _at = end;
                break;
            }
        }

        if (Current is not (Sign.Colon or Sign.Number or Sign.Direct or Sign.Alternating or Sign.Open))
            _at = start;
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
