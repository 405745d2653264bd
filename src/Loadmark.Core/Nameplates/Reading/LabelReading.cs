using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Puts the phrases of one label together and marks the tokens that were understood.</summary>
internal ref struct LabelReading
{
    /// <summary>How far to look for a neighbour that gives a word its meaning; keeps reading linear.</summary>
    private const int Reach = 8;

    private readonly Span<Token> _tokens;
    private readonly ReadOnlySpan<Phrase> _phrases;
    private readonly FigureReading _figures = new();
    private FormMarks _waitingForms;
    private FormMarks _forms;
    private RegulationMarks _regulation;
    private Negation _negation;
    private List<Phrase>? _aside;
    private PolarityMarks _polarity;
    private Field<Plug> _plug;
    private Field<Volts> _oddVolts;
    private Field<Amps> _oddAmps;
    private Field<Watts> _oddWatts;

    /// <summary>Prepares to put phrases together.</summary>
    public LabelReading(Span<Token> tokens, ReadOnlySpan<Phrase> phrases)
    {
        _tokens = tokens;
        _phrases = phrases;
    }

    /// <summary>Reads every phrase.</summary>
    /// <param name="text">The label as given.</param>
    /// <param name="rest">What of the label lies beyond the tokens; null when nothing does.</param>
    public Nameplate Read(string text, Place? rest)
    {
        for (var i = 0; i < _phrases.Length; i++)
        {
            if (_negation.Takes(_phrases, i, _tokens, text))
                Deny(_phrases[i]);
            else
                ReadPhrase(i, text);
        }

        ReadAside();
        _figures.Finish();
        _forms.Add(_waitingForms);

        // Beside a mains input alone there is no low voltage for a form to be of.
        if (_figures.Mains != null && _figures.Groups.Count == 0)
            _forms = default;
        if (_figures.HertzOfMode is { } hertz && _forms.IsEmpty)
            _forms.Add(direct: false, hertz);

        var amps = Settle(_oddAmps, _figures.DisputedAmps);
        var watts = Settle(_oddWatts, _figures.DisputedWatts);
        foreach (var place in _figures.Rejected)
            Reject(place);

        var derived = new Derivation();
        return new Nameplate(text)
        {
            Form = _forms.Field,
            Modes = derived.Modes(_figures.Groups),
            Derived = derived.Keys,
            Conflicts = derived.Conflicts,
            AmbiguousVolts = _oddVolts,
            AmbiguousAmps = amps,
            AmbiguousWatts = watts,
            Polarity = _polarity.Field,
            Plug = _plug,
            Regulated = _regulation.Field,
            Mains = _figures.Mains is { IsEmpty: false } mains
                ? new MainsInput(
                    mains.Volts?.As<Volt>(),
                    mains.Hertz?.As<Hertz>(),
                    mains.Amps is { } current ? new Amps(current.High) : null,
                    mains.Watts is { } power ? new Watts(power.High) : null,
                    mains.Place)
                {
                    Choices = _figures.MainsChoices,
                }
                : null,
            Unread = UnreadPieces.Of(text, _tokens, rest),
        };
    }

    private void ReadPhrase(int index, string text)
    {
        var phrase = _phrases[index];
        var tokens = _tokens[phrase.From..phrase.To];
        switch (phrase.Kind)
        {
            case PhraseKind.Volts:
                ReadVolts(index, tokens, LimitOf(phrase, text));
                break;
            case PhraseKind.Amps or PhraseKind.Watts when !_figures.AtMains && IsAside(phrase):
                (_aside ??= []).Add(phrase);
                break;
            case PhraseKind.Amps:
                ReadAmps(phrase, tokens);
                break;
            case PhraseKind.Watts:
                ReadWatts(tokens);
                break;
            case PhraseKind.Hertz:
                ReadHertz(tokens);
                break;
            case PhraseKind.Side:
                Understand(tokens);

                // "AC INPUT 50 Hz OUTPUT 9 V": what was said of the mains input is not said of the output.
                if (_figures.AtMains || (tokens[0].Sign == Sign.Output && _figures.IsMainsSide))
                    _waitingForms = default;
                _figures.StartSide(tokens[0].Sign);
                break;
            case PhraseKind.Title:
                ReadTitle(index, tokens);
                break;
            case Sign.Direct or Sign.Alternating or Sign.Tilde:
                Understand(tokens);
                ReadForm(index, phrase.Kind == Sign.Direct, PlaceOf(tokens));
                break;
            case PhraseKind.ContactSign or PhraseKind.SignContact:
                ReadContact(phrase, tokens);
                break;
            case Sign.Drawing:
                Understand(tokens);
                _polarity.Add(
                    negative: tokens[0].Value != PolarityDrawing.CentrePositive,
                    positive: tokens[0].Value != PolarityDrawing.CentreNegative,
                    PlaceOf(tokens));
                break;
            case PhraseKind.PlugSize or PhraseKind.InchJack:
                if (PlugSizes.OfSize(tokens) is { } plug)
                    AddPlug(tokens, plug);
                break;
            case PhraseKind.Diameter:
                ReadDiameter(index, tokens);
                break;
            case Sign.Regulated or Sign.Unregulated or Sign.Linear:
                ReadRegulation(phrase, tokens);
                break;
            case Sign.Open:
                _figures.OpenBracket();
                break;
            case Sign.Close:
                _figures.CloseBracket();
                break;
            case Sign.Word or Sign.Identifier or Sign.NewLine or Sign.Semicolon:
                _figures.EndList();
                break;
            default:
                break;
        }
    }

    private static void Understand(Span<Token> tokens)
    {
        foreach (ref var token in tokens)
            token.Understood = true;
    }

    /// <summary>What the label denies stays unread, every sign of it.</summary>
    private readonly void Deny(Phrase phrase)
    {
        foreach (ref var token in _tokens[phrase.From..phrase.To])
            token.Sign = Sign.Word;
    }

    private static Place PlaceOf(ReadOnlySpan<Token> tokens) => new(tokens[0].Start, tokens[^1].End - tokens[0].Start);

    private readonly void Reject(Place place)
    {
        foreach (ref var token in _tokens)
        {
            if (token.Start >= place.Start && token.End <= place.End)
                token.Understood = false;
        }
    }

    /// <summary>One field for both; when both are spoken of, the second stays unread rather than unsaid.</summary>
    private readonly Field<T> Settle<T>(Field<T> odd, Field<T> disputed)
        where T : struct
    {
        // What was unreadable is among the unread already.
        if (odd.State == FieldState.Absent || (odd.State == FieldState.Unreadable && disputed.State != FieldState.Absent))
            return disputed;
        if (disputed.State != FieldState.Absent)
            Reject(disputed.Place);
        return odd;
    }

    private void ReadVolts(int index, Span<Token> tokens, char limit)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureText.Most];
        var count = FigureText.Read(tokens, figures, ref _oddVolts);
        if (count == 0)
            return;

        if (index >= 2 && _phrases[index - 1].Kind == Sign.At && _phrases[index - 2].Kind == PhraseKind.Amps)
            _figures.DetachAmps();

        if (count == 1 && _figures.TryExtend(figures[0], limit, index > 0 && _phrases[index - 1].Kind == Sign.Open))
        {
            _forms.Add(_waitingForms);
            _waitingForms = default;
            count = 0;
        }

        // "9 V, 230 V": a list may run from one kind into the other.
        var start = 0;
        for (var i = 1; i <= count && count > 0; i++)
        {
            if (i < count && _figures.IsMains(figures[i]) == _figures.IsMains(figures[start]))
                continue;
            _figures.AddVolts(figures[start..i]);
            if (!_figures.AtMains)
                _forms.Add(_waitingForms);
            _waitingForms = default;
            start = i;
        }

        foreach (var token in tokens)
        {
            if (!_figures.AtMains && token.Sign is Sign.Direct or Sign.Alternating)
                _forms.Add(token.Sign == Sign.Direct, new Place(token.Start, token.Length));
        }
    }

    /// <summary>'a' for "max" at a voltage, 'i' for "min", '\0' for neither; a word between two figures goes with the second.</summary>
    private readonly char LimitOf(Phrase phrase, string text)
    {
        var before = phrase.From - 1;
        while (before >= 0 && _tokens[before].Sign is Sign.Point or Sign.Colon or Sign.Filler)
            before--;
        if (before >= 0 && _tokens[before].Sign == Sign.Qualifier)
            return LimitOf(_tokens[before], text);
        var after = phrase.To;
        if (after < _tokens.Length && _tokens[after].Sign is Sign.Direct or Sign.Alternating or Sign.Open)
            after++;
        if (after >= _tokens.Length || _tokens[after].Sign != Sign.Qualifier)
            return '\0';
        var next = after + 1;
        if (next < _tokens.Length && _tokens[next].Sign == Sign.Point)
            next++;
        if (next < _tokens.Length && _tokens[next].Sign == Sign.Number)
            return '\0';
        return LimitOf(_tokens[after], text);
    }

    private static char LimitOf(Token qualifier, string text) =>
        qualifier.Length >= 3 && text[qualifier.Start] is 'm' or 'M' ? char.ToLowerInvariant(text[qualifier.Start + 1]) : '\0';

    /// <summary>Whether "total", "peak" or the like stands at a figure: it is not what one outlet gives or one load draws.</summary>
    private readonly bool IsAside(Phrase phrase)
    {
        var before = phrase.From - 1;
        for (var words = 0; words < Reach && before >= 0 && _tokens[before].Sign is Sign.Point or Sign.Colon or Sign.Quiet or Sign.Output or Sign.Filler or Sign.Qualifier; words++)
            before--;
        var after = phrase.To;
        while (after < _tokens.Length && after < phrase.To + 3 && _tokens[after].Sign is Sign.Point or Sign.Open or Sign.Filler)
            after++;
        if (before >= 0 && _tokens[before].Sign == Sign.Aside)
            return true;

        // "500 mA total 3 A": the word goes with the figure after it.
        return after < _tokens.Length && _tokens[after].Sign == Sign.Aside
            && !(after + 2 < _tokens.Length && _tokens[after + 1].Sign == Sign.Number && _tokens[after + 2].Sign is Sign.Ampere or Sign.Watt);
    }

    /// <summary>A total is the label's figure when it prints no other: "Total 1.5 A".</summary>
    private void ReadAside()
    {
        if (_aside == null || _figures.Groups.Count > 0)
            return;
        foreach (var phrase in _aside)
        {
            if (phrase.Kind == PhraseKind.Amps)
                ReadAmps(phrase, _tokens[phrase.From..phrase.To]);
            else
                ReadWatts(_tokens[phrase.From..phrase.To]);
        }
    }

    private void ReadRegulation(Phrase phrase, Span<Token> tokens)
    {
        Understand(tokens);
        var sign = tokens[0].Sign;
        var place = PlaceOf(tokens);

        // "not regulated", "non-regulated"
        var before = phrase.From - 1;
        if (before >= 0 && _tokens[before].Sign == Sign.Dash)
            before--;
        if (sign == Sign.Regulated && before >= 0 && _tokens[before].Sign is Sign.Un or Sign.Not)
        {
            sign = Sign.Unregulated;
            Understand(_tokens[before..phrase.To]);
            place = PlaceOf(_tokens[before..phrase.To]);
        }

        _regulation.Add(sign, place);
    }

    private void ReadAmps(Phrase phrase, Span<Token> tokens)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureText.Most];
        var count = FigureText.Read(tokens, figures, ref _oddAmps);
        if (count > 0)
            _figures.AddAmps(figures[..count], IsQualified(phrase));
    }

    private void ReadWatts(Span<Token> tokens)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureText.Most];
        var count = FigureText.Read(tokens, figures, ref _oddWatts);
        if (count > 0)
            _figures.AddWatts(figures[..count]);
    }

    private readonly void ReadHertz(Span<Token> tokens)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureText.Most];
        var odd = default(Field<Frequency>);
        var count = FigureText.Read(tokens, figures, ref odd);
        if (odd.State == FieldState.Ambiguous)
            Reject(odd.Place);
        if (count == 0)
            return;

        var first = figures[0];
        foreach (var figure in figures[1..count])
            first = new PrintedFigure(Math.Min(first.Low, figure.Low), Math.Max(first.High, figure.High), first.Place.Union(figure.Place));
        _figures.AddHertz(first);
    }

    /// <summary>Whether "typ", "max" or the like stands at a current, on either side.</summary>
    private readonly bool IsQualified(Phrase phrase)
    {
        var before = phrase.From - 1;
        while (before >= 0 && _tokens[before].Sign is Sign.Point or Sign.Colon or Sign.Open)
            before--;
        var after = phrase.To;
        while (after < _tokens.Length && _tokens[after].Sign is Sign.Point or Sign.Open)
            after++;
        return (before >= 0 && _tokens[before].Sign == Sign.Qualifier) || (after < _tokens.Length && _tokens[after].Sign == Sign.Qualifier);
    }

    /// <summary>"AC/DC adaptor" names the thing; in "9 V AC adaptor" the form is the voltage's.</summary>
    private void ReadTitle(int index, Span<Token> tokens)
    {
        Understand(tokens);
        if (!FollowsVolts(index))
            return;
        foreach (var token in tokens)
        {
            if (token.Sign is Sign.Direct or Sign.Alternating)
                ReadForm(index, token.Sign == Sign.Direct, new Place(token.Start, token.Length));
        }
    }

    private void ReadForm(int index, bool direct, Place place)
    {
        // "100-240 V, DC OUT 9 V": the form goes with the output that follows.
        if (direct && index > 0 && _phrases[index - 1].Kind is Sign.Comma or Sign.Semicolon && StartsOutput(index + 1))
        {
            _forms.Add(direct, place);
        }
        else if (FollowsVolts(index))
        {
            if (!_figures.AtMains)
                _forms.Add(direct, place);
        }
        else if (PrecedesVolts(index))
        {
            _waitingForms.Add(direct, place);
        }
        else if (!_figures.AtMains)
        {
            if (_figures.AtMode)
                _forms.Add(direct, place);
            else
                _waitingForms.Add(direct, place);
        }
    }

    private readonly bool StartsOutput(int index) =>
        index < _phrases.Length && _phrases[index].Kind == PhraseKind.Side && _tokens[_phrases[index].From].Sign == Sign.Output;

    private readonly bool FollowsVolts(int index)
    {
        for (var i = index - 1; i >= 0 && i >= index - Reach; i--)
        {
            if (_phrases[i].Kind == PhraseKind.Volts)
                return true;
            if (!IsPassed(_phrases[i].Kind) || _phrases[i].Kind is Sign.NewLine or Sign.Semicolon)
                return false;
        }

        return false;
    }

    private readonly bool PrecedesVolts(int index)
    {
        for (var i = index + 1; i < _phrases.Length && i <= index + Reach; i++)
        {
            if (_phrases[i].Kind == PhraseKind.Volts)
                return true;
            if (!IsPassed(_phrases[i].Kind) && _phrases[i].Kind != PhraseKind.Side)
                return false;
        }

        return false;
    }

    private static bool IsPassed(char kind) => Sign.IsPlain(kind) || kind is Sign.Direct or Sign.Alternating;

    private void ReadContact(Phrase phrase, Span<Token> tokens)
    {
        var signFirst = phrase.Kind == PhraseKind.SignContact;
        var sign = tokens[signFirst ? 0 : ^1];
        var contact = tokens[0];
        if (signFirst)
        {
            var i = 1;
            while (tokens[i].Sign is Sign.Dash or Sign.Colon or Sign.Point)
                i++;
            contact = tokens[i];
        }

        if (sign.Sign == Sign.Dash && !IsSign(phrase, sign, signFirst, contact))
            return;

        Understand(tokens);
        var positive = sign.Sign is Sign.Positive or Sign.Plus;
        if (contact.Sign is Sign.Sleeve or Sign.Barrel)
            positive = !positive;
        _polarity.Add(negative: !positive, positive, PlaceOf(tokens));
    }

    /// <summary>A dash beside the name of a contact may be its sign, or only a dash between two pieces of the label.</summary>
    private readonly bool IsSign(Phrase phrase, Token dash, bool signFirst, Token contact)
    {
        if (!signFirst)
        {
            // "barrel - 9 V": a connector, a dash, a figure.
            return contact.Sign is not (Sign.Barrel or Sign.Pin) || phrase.To >= _tokens.Length || _tokens[phrase.To].Sign != Sign.Number;
        }

        var before = phrase.From > 0 ? _tokens[phrase.From - 1].Sign : Sign.NewLine;
        var apart = before is Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Colon or Sign.Open or Sign.Slash or Sign.Positive or Sign.Negative or Sign.Sleeve or Sign.Centre;
        return apart || (dash.Spaced && !contact.Spaced);
    }

    private void ReadDiameter(int index, Span<Token> tokens)
    {
        var jack = false;
        var coaxial = false;
        var millimetres = 0m;
        foreach (var token in tokens)
        {
            if (token.Sign == Sign.Number)
                millimetres = token.Value;
            Consider(token.Sign, ref jack, ref coaxial);
        }

        // "centre negative 2.1 mm": a contact beside it vouches for the connector as well.
        for (var i = Math.Max(0, index - 2); i < Math.Min(_phrases.Length, index + 3); i++)
            Consider(_phrases[i].Kind, ref jack, ref coaxial);

        var plugs = PlugSizes.OfDiameter(millimetres, jack, coaxial);
        if (!plugs.IsEmpty)
            AddPlug(tokens, plugs);
    }

    private static void Consider(char sign, ref bool jack, ref bool coaxial)
    {
        jack |= sign == Sign.Jack;
        coaxial |= sign is Sign.Connector or Sign.Pin or Sign.Barrel or Sign.Centre or PhraseKind.ContactSign or PhraseKind.SignContact;
    }

    private void AddPlug(Span<Token> tokens, params scoped ReadOnlySpan<Plug> plugs)
    {
        Understand(tokens);
        var place = PlaceOf(tokens);
        switch (_plug.State)
        {
            case FieldState.Absent:
                _plug = plugs.Length == 1 ? Field<Plug>.Read(plugs[0], place) : Field<Plug>.Ambiguous([.. plugs], place);
                break;
            case FieldState.Read when plugs.Length == 1 && plugs[0] == _plug.Value:
                break;
            default:
                var candidates = _plug.Value is { } read ? [read] : _plug.Candidates.ToList();
                foreach (var plug in plugs)
                {
                    if (!candidates.Contains(plug))
                        candidates.Add(plug);
                }

                _plug = Field<Plug>.Ambiguous([.. candidates], _plug.Place.Union(place));
                break;
        }
    }
}
