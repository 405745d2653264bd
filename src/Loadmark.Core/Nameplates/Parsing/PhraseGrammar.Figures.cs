namespace Loadmark.Core.Nameplates.Parsing;

/// <content>The rules of figures: values, alternatives and ranges.</content>
internal ref partial struct PhraseGrammar
{
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
}
