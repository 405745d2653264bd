namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Direct and alternating, and regulation.</content>
internal ref partial struct LabelParser
{
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
                AddForm(direct, place);
        }
        else if (PrecedesVolts(index))
        {
            _waitingForms.Add(direct, place);
        }
        else if (!_figures.AtMains)
        {
            if (_figures.AtMode)
                AddForm(direct, place);
            else
                _waitingForms.Add(direct, place);
        }
    }

    /// <summary>A form is of the outlets or the input it stands at, else of the label.</summary>
    private void AddForm(bool direct, Place place)
    {
        if (_figures.Current is { } outlets)
        {
            var marks = outlets.Forms;
            marks.Add(direct, place);
            outlets.Forms = marks;
        }
        else if (_figures.AtInput)
        {
            _inputForms.Add(direct, place);
        }
        else
        {
            _forms.Add(direct, place);
        }
    }

    private void AddForms(FormMarks marks)
    {
        if (marks.Direct)
            AddForm(direct: true, marks.Place);
        if (marks.Alternating)
            AddForm(direct: false, marks.Place);
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

    private static bool IsPassed(char kind) => Sign.IsPlain(kind) || kind is Sign.Direct or Sign.Alternating or Sign.Each or Sign.Isolated;

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
}
