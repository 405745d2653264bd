namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Voltages, currents, powers, frequencies; totals and what stands aside.</content>
internal ref partial struct LabelParser
{
    private void ReadVolts(int index, Span<Token> tokens, char limit)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureParser.MostFigures(tokens)];
        var count = FigureParser.Read(tokens, figures, ref _oddVolts);
        if (count == 0)
        {
            _figures.LoseVolts();
            return;
        }

        if (_sidesFollow)
            StartSideAfter(index);

        if (index >= 2 && _phrases[index - 1].Kind == Sign.At && _phrases[index - 2].Kind == PhraseKind.Amps)
            _figures.DetachAmps();

        if (count == 1 && _figures.TryExtend(figures[0], limit, index > 0 && _phrases[index - 1].Kind == Sign.Open))
        {
            AddForms(_waitingForms);
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
            if (!_figures.AtMains && IsFedFrom(index))
                _figures.MarkInput();
            if (!_figures.AtMains)
                AddForms(_waitingForms);
            _waitingForms = default;
            start = i;
        }

        foreach (var token in tokens)
        {
            if (!_figures.AtMains && token.Sign is Sign.Direct or Sign.Alternating)
                AddForm(token.Sign == Sign.Direct, new Place(token.Start, token.Length));
        }
    }

    /// <summary>"Fed from 12 V adaptor": a voltage that comes from another supply.</summary>
    private readonly bool IsFedFrom(int index) =>
        index > 0 && index + 1 < _phrases.Length && _phrases[index - 1].Kind == Sign.Filler && _phrases[index + 1].Kind == Sign.Adaptor;

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

    /// <summary>
    /// Where "total", "peak" or the like stands at a figure, which is then not what one outlet gives or one load draws; −1
    /// when none does.
    /// </summary>
    private readonly int AsideOf(Phrase phrase)
    {
        var before = phrase.From - 1;
        var drawn = false;

        // "Total: 9 V/600 mA": the voltage stands between.
        if (before >= 0 && _tokens[before].Sign == Sign.Slash)
            before--;
        if (before >= 0 && _tokens[before].Sign is Sign.Direct or Sign.Alternating)
            before--;
        if (before >= 1 && _tokens[before].Sign == Sign.Volt && _tokens[before - 1].Sign == Sign.Number)
            before -= 2;
        else
            before = phrase.From - 1;
        for (var words = 0;
            words < Reach
            && before >= 0
            && _tokens[before].Sign is Sign.Point or Sign.Colon or Sign.Quiet or Sign.Output or Sign.Filler or Sign.Qualifier;
            words++)
        {
            drawn |= _tokens[before].Sign == Sign.Quiet && IsDraw(before);
            before--;
        }

        var after = phrase.To;
        while (after < _tokens.Length && after < phrase.To + 4
            && _tokens[after].Sign is Sign.Point or Sign.Open or Sign.Filler or Sign.Qualifier)
            after++;

        // "Total consumption 100 mA" is what a load draws.
        if (before >= 0 && _tokens[before].Sign is Sign.Aside or Sign.Total)
            return drawn && _tokens[before].Sign == Sign.Total ? -1 : before;

        // "500 mA total 3 A": the word goes with the figure after it.
        var takes = after < _tokens.Length && _tokens[after].Sign is Sign.Aside or Sign.Total
            && !(
                after + 2 < _tokens.Length && _tokens[after + 1].Sign == Sign.Number && _tokens[after + 2].Sign is Sign.Ampere or Sign.Watt)
            && !(
                after + 3 < _tokens.Length && _tokens[after + 1].Sign is Sign.Qualifier or Sign.Output or Sign.Colon
                    && _tokens[after + 2].Sign == Sign.Number && _tokens[after + 3].Sign is Sign.Ampere or Sign.Watt);
        return takes ? after : -1;
    }

    /// <summary>Whether a token is a word for what a thing draws: "consumption", "draw".</summary>
    private readonly bool IsDraw(int token) => _tokens[token].Length >= 4 && _text[_tokens[token].Start] is 'd' or 'D' or 'c' or 'C'
        && _text[_tokens[token].Start + 1] is 'r' or 'R' or 'o' or 'O';

    /// <summary>
    /// A total beside other figures is the total of all outputs. When the label prints no other figure it is the label's own:
    /// "Total 1.5 A".
    /// </summary>
    private void ReadAside()
    {
        if (_aside == null)
            return;
        var alone = _figures is { Groups.Count: 0, Mains: null };
        foreach (var (phrase, word) in _aside)
        {
            if (!alone && _tokens[word].Sign == Sign.Total)
                ReadTotal(phrase, word);
            else if (alone && phrase.Kind == PhraseKind.Amps)
                ReadAmps(phrase, _tokens[phrase.From..phrase.To]);
            else if (alone)
                ReadWatts(_tokens[phrase.From..phrase.To]);
        }
    }

    private void ReadTotal(Phrase phrase, int word)
    {
        var tokens = _tokens[phrase.From..phrase.To];
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureParser.MostFigures(tokens)];
        var amps = default(Field<Amps>);
        var watts = default(Field<Watts>);
        var isAmps = phrase.Kind == PhraseKind.Amps;
        var count = isAmps ? FigureParser.Read(tokens, figures, ref amps) : FigureParser.Read(tokens, figures, ref watts);
        if (count != 1 || figures[0].Doubtful || figures[0].IsApparent
            || (isAmps ? _totalAmps : _totalWatts) is { } before && before.High != figures[0].High)
        {
            foreach (ref var token in tokens)
                token.Understood = false;
            return;
        }

        Understand(_tokens.Slice(word, 1));
        if (isAmps)
            _totalAmps = figures[0];
        else
            _totalWatts = figures[0];
    }

    private void ReadAmps(Phrase phrase, Span<Token> tokens)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureParser.MostFigures(tokens)];
        var count = FigureParser.Read(tokens, figures, ref _oddAmps);
        if (count > 0)
            _figures.AddAmps(figures[..count], IsQualified(phrase));
        ReadStates(phrase);
    }

    private void ReadWatts(Span<Token> tokens)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureParser.MostFigures(tokens)];
        var count = FigureParser.Read(tokens, figures, ref _oddWatts);
        if (count > 0)
            _figures.AddWatts(figures[..count]);
    }

    private readonly void ReadHertz(Span<Token> tokens)
    {
        Span<PrintedFigure> figures = stackalloc PrintedFigure[FigureParser.MostFigures(tokens)];
        var odd = default(Field<Frequency>);
        var count = FigureParser.Read(tokens, figures, ref odd);
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
        return (before >= 0 && _tokens[before].Sign is Sign.Qualifier or Sign.State)
            || (after < _tokens.Length && _tokens[after].Sign is Sign.Qualifier or Sign.State);
    }

    /// <summary>"12 mA LED on, 6 mA LED off": the words that say when a current flows.</summary>
    private readonly void ReadStates(Phrase phrase)
    {
        var before = phrase.From - 1;
        if (before >= 0 && _tokens[before].Sign is Sign.Colon or Sign.Open)
            before--;
        for (; before >= 0 && before > phrase.From - Reach && _tokens[before].Sign == Sign.State; before--)
            _tokens[before].Understood = true;
        var after = phrase.To;
        if (after < _tokens.Length && _tokens[after].Sign == Sign.Open)
            after++;
        for (; after < _tokens.Length && after < phrase.To + Reach && _tokens[after].Sign == Sign.State; after++)
            _tokens[after].Understood = true;
    }
}
