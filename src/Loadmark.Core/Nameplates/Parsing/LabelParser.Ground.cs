namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Isolation, ground, and what was not understood.</content>
internal ref partial struct LabelParser
{
    private void ReadIsolation(int index, Span<Token> tokens)
    {
        var phrase = _phrases[index];
        var place = PlaceOf(tokens);
        var isolated = tokens[0].Sign == Sign.Isolated;
        if (!isolated)
        {
            // "common ground", "shared return"
            if (phrase.To >= _tokens.Length || _tokens[phrase.To].Sign is not (Sign.Ground or Sign.Return))
                return;
            place = PlaceOf(_tokens[phrase.From..(phrase.To + 1)]);
            Understand(_tokens[phrase.From..(phrase.To + 1)]);
        }
        else
        {
            // "not isolated", "non-isolated"
            var before = phrase.From - 1;
            if (before >= 0 && _tokens[before].Sign == Sign.Dash)
                before--;
            var denied = before >= 0 && _tokens[before].Sign is Sign.Un or Sign.Not;
            isolated = !denied;
            if (denied)
                place = PlaceOf(_tokens[before..phrase.To]);
            Understand(_tokens[(denied ? before : phrase.From)..phrase.To]);
        }

        if (_figures.Current is { } outlets && !_setOff)
        {
            var marks = outlets.Isolation;
            marks.Add(isolated, place);
            outlets.Isolation = marks;
        }
        else
        {
            _isolation.Add(isolated, place);
        }
    }

    private void ReadGround(Phrase phrase, Span<Token> tokens)
    {
        var signFirst = tokens[0].Sign != Sign.Ground;
        var sign = tokens[signFirst ? 0 : ^1];
        var before = phrase.From > 0 ? _tokens[phrase.From - 1].Sign : Sign.NewLine;

        // "+/- ground" leaves it open, and a lone dash may only part two words.
        if (signFirst && before is Sign.Slash or Sign.Plus or Sign.Dash or Sign.Positive or Sign.Negative or Sign.Or)
            return;
        var next = phrase.To < _tokens.Length ? _tokens[phrase.To] : default;
        if (sign.Sign == Sign.Dash
            && !(
                signFirst
                    ? before is Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Open
                    : next.Sign is '\0' or Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Close))
            return;
        if (!signFirst && next.Sign is Sign.Slash && phrase.To + 1 < _tokens.Length
            && _tokens[phrase.To + 1].Sign is Sign.Positive or Sign.Negative or Sign.Plus or Sign.Dash)
            return;

        Understand(tokens);
        _ground.Add(sign.Sign is Sign.Positive or Sign.Plus, PlaceOf(tokens));
    }

    /// <summary>What stands unread, where no field says it in words that were understood.</summary>
    private readonly LabelTopics NotUnderstood(Place? rest)
    {
        var topics = rest is null ? Topics.Unread(_tokens, _text) : AllTopics;
        if (_forms.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Form;
        if (_polarity.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Polarity;
        if (_plug.State != FieldState.Absent)
            topics &= ~LabelTopics.Plug;
        if (_ground.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Ground;
        if (_regulation.Field.State != FieldState.Absent)
            topics &= ~LabelTopics.Regulation;
        return topics;
    }

    private const LabelTopics AllTopics =
        LabelTopics.Form | LabelTopics.Polarity | LabelTopics.Ground | LabelTopics.Plug | LabelTopics.Regulation;
}
