namespace Loadmark.Core.Nameplates.Parsing;

/// <content>What each phrase adds to what the label says.</content>
internal ref partial struct LabelParser
{
    private void ReadPhrase(int index)
    {
        var phrase = _phrases[index];
        var tokens = _tokens[phrase.From..phrase.To];
        switch (phrase.Kind)
        {
            case PhraseKind.Volts:
                _setOff = false;
                ReadVolts(index, tokens, LimitOf(phrase, _text));
                break;
            case PhraseKind.Amps or PhraseKind.Watts when !_figures.AtMains && AsideOf(phrase) is var word and >= 0:
                (_aside ??= []).Add((phrase, word));
                break;
            case PhraseKind.Amps:
                var isOfAll = _setOff && index + 1 < _phrases.Length && _phrases[index + 1].Kind == Sign.Each;
                _setOff = false;
                ReadAmps(phrase, tokens);
                if (isOfAll)
                    _figures.SpreadAmps();
                break;
            case PhraseKind.Watts:
                ReadWatts(tokens);
                break;
            case PhraseKind.Hertz:
                ReadHertz(tokens);
                break;
            case PhraseKind.Side when tokens[0].Sign == Sign.Output && IsPerOutlet(index):
                Understand(tokens);
                _each = true;
                break;
            case PhraseKind.Side when _sidesFollow:
                Understand(tokens);
                break;
            case PhraseKind.Side:
                Understand(tokens);

                // "AC INPUT 50 Hz OUTPUT 9 V": what was said of the mains input is not said of the output.
                if (_figures.AtMains || (tokens[0].Sign == Sign.Output && _figures.IsMainsSide))
                    _waitingForms = default;
                SplitOutputs(index);
                _figures.StartSide(tokens[0].Sign, trails: tokens.Length == 1 && !HasVoltsAhead(index));
                if (tokens[0].Sign == Sign.Output && tokens.Length > 1)
                    ReadOutletIds(index, tokens);
                break;
            case Sign.Arrow when HasVoltsAhead(index):
                Understand(tokens);
                _figures.StartSide(Sign.Input, trails: true);
                _figures.StartSide(Sign.Output, trails: false);
                break;
            case PhraseKind.OutletIds:
                ReadOutletIds(index, tokens);
                break;
            case PhraseKind.OutletCount:
                ReadOutletCount(index, tokens);
                break;
            case Sign.Each:
                Understand(tokens);
                _each = true;
                break;
            case Sign.Isolated or Sign.Common:
                ReadIsolation(index, tokens);
                break;
            case PhraseKind.GroundSign:
                ReadGround(phrase, tokens);
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
                AddPolarity(
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
            case Sign.NewLine or Sign.Semicolon:
                _figures.EndList();
                _setOff = true;
                break;
            case Sign.Point when _text[tokens[0].Start] == '.':
                _figures.EndList();
                _setOff = true;
                break;
            case Sign.Identifier when _text[tokens[0].End - 1] is 'V' or 'v':
                _figures.EndList();
                _figures.NoteUnread();

                // "+9 V, -9 V 0.5 A, +5 V": the current is of the voltage that was taken out, not of the next.
                if (tokens[0].Length == 1 && phrase.From >= 2 && _text[_tokens[phrase.From - 2].Start] is '+' or '-')
                    _figures.LoseVolts();
                break;
            case Sign.Quiet when index + 1 < _phrases.Length && _phrases[index + 1].Kind == Sign.Point
                && _text[_tokens[phrase.To].Start] == '?' && _text[tokens[0].Start] is 'v' or 'V':
                // "voltage?": printed, and not understood.
                _figures.NoteUnread();
                break;
            case Sign.Word when IsPortOutput(index):
                _figures.SplitOutputs(PlaceOf(tokens));
                break;
            case Sign.Word or Sign.Identifier or Sign.State or Sign.Foreign:
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
        {
            token.Topic |= Topics.Of(token);
            token.Sign = Sign.Word;
        }
    }

    private static Place PlaceOf(ReadOnlySpan<Token> tokens) => new(tokens[0].Start, tokens[^1].End - tokens[0].Start);
}
