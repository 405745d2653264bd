namespace Loadmark.Core.Nameplates.Parsing;

/// <content>The rules of contacts with their signs and of connectors with their sizes.</content>
internal ref partial struct PhraseGrammar
{
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

    /// <summary>after = ("-" | line) (positive | negative) !contact | sign !ground | (":" | "=" | "(" | "/") (word | "(")? sign</summary>
    private bool SignAfter()
    {
        var start = _at;
        if (Take(Sign.Dash) && TakeAny([Sign.Positive, Sign.Negative]))
            return true;
        _at = start;
        if (Take(Sign.NewLine) && TakeAny([Sign.Positive, Sign.Negative])
            && Current is not (Sign.Centre or Sign.Pin or Sign.Sleeve or Sign.Barrel or Sign.Word or Sign.Ground))
            return true;
        _at = start;
        if (AnySign() && Current != Sign.Ground)
            return true;
        _at = start;
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
        TakeUpTo(MostWords, [Sign.Filler, Sign.At]);
        if (!Contact())
            return Back(start);

        var end = _at;
        if (SignAfter() && !Contact())
            return Back(start);
        _at = end;
        return true;
    }

    /// <summary>grounded = sign ("-" | ":" | word)* ground !sign</summary>
    private bool SignThenGround()
    {
        var start = _at;
        if (!AnySign())
            return false;
        TakeAny([Sign.Dash, Sign.Colon, Sign.Point]);
        TakeUpTo(MostWords, [Sign.Filler, Sign.At, Sign.Quiet]);
        return Take(Sign.Ground) || Back(start);
    }

    /// <summary>grounding = ground (":" | "=" | "-" | "(" | word)* sign</summary>
    private bool GroundThenSign()
    {
        var start = _at++;
        TakeUpTo(MostWords, [Sign.Colon, Sign.Direct, Sign.Point, Sign.Open, Sign.Filler, Sign.Quiet]);
        if (Take(Sign.Dash) && TakeAny([Sign.Positive, Sign.Negative]))
            return true;
        if (_at < _signs.Length && _signs[_at - 1] == Sign.Dash)
            _at--;
        return AnySign() || Back(start);
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
        if (Crossed() || Slashed() || Named())
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

    /// <summary>crossed = number mm? ("x" | diameter ("x" | "," | "/")?) number mm? ("x" number)? mm? diameter? !unit</summary>
    private bool Crossed()
    {
        var start = _at;
        if (!Take(Sign.Number))
            return false;
        Take(Sign.Millimetre);
        if (Take(Sign.Diameter))
            TakeAny([Sign.Times, Sign.Comma, Sign.Slash]);
        else if (!Take(Sign.Times))
            return Back(start);
        if (!Take(Sign.Number))
            return Back(start);
        Take(Sign.Millimetre);
        var two = _at;
        if (!(Take(Sign.Times) && Take(Sign.Number)))
            _at = two;
        Take(Sign.Millimetre);
        var sized = _at;
        if (!Take(Sign.Diameter) || KindOf(Current) != '\0')
            _at = sized;
        return KindOf(Current) == '\0' || Back(start);
    }

    /// <summary>named = diameter (":" | "=")? number mm? ("x" | "," | "/")? diameter (":" | "=")? number mm? !unit</summary>
    private bool Named()
    {
        var start = _at;
        if (!NamedOne())
            return Back(start);
        TakeAny([Sign.Times, Sign.Comma, Sign.Slash]);
        return (NamedOne() && KindOf(Current) == '\0') || Back(start);
    }

    private bool NamedOne()
    {
        if (!Take(Sign.Diameter))
            return false;
        TakeAny([Sign.Colon, Sign.Direct, Sign.Point]);
        if (!Take(Sign.Number))
            return false;
        Take(Sign.Millimetre);
        return true;
    }

    /// <summary>slashed = number mm? ("/" | "-") number (mm | !more): without a unit only where nothing goes on.</summary>
    private bool Slashed()
    {
        var start = _at;
        if (Take(Sign.Number))
        {
            Take(Sign.Millimetre);
            if (TakeAny([Sign.Slash, Sign.Dash]) && Take(Sign.Number)
                && (Take(Sign.Millimetre)
                    || Current is '\0' or Sign.NewLine or Sign.Semicolon or Sign.Connector or Sign.Jack or Sign.Pin or Sign.Barrel))
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
}
