using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Contacts with their signs, and plugs.</content>
internal ref partial struct LabelParser
{
    private void ReadContact(Phrase phrase, Span<Token> tokens)
    {
        var signFirst = phrase.Kind == PhraseKind.SignContact;
        var sign = tokens[signFirst ? 0 : ^1];
        var contact = tokens[0];
        if (signFirst)
        {
            var i = 1;
            while (tokens[i].Sign is Sign.Dash or Sign.Colon or Sign.Point or Sign.Filler or Sign.At)
                i++;
            contact = tokens[i];
        }

        if (sign.Sign == Sign.Dash && !IsSign(phrase, sign, signFirst, contact))
            return;

        Understand(tokens);
        var positive = sign.Sign is Sign.Positive or Sign.Plus;
        if (contact.Sign is Sign.Sleeve or Sign.Barrel)
            positive = !positive;
        AddPolarity(negative: !positive, positive, PlaceOf(tokens));
    }

    /// <summary>A polarity is of the outlets or the input it stands at, else of the label.</summary>
    private void AddPolarity(bool negative, bool positive, Place place)
    {
        if (_figures.Current is { } outlets && !_setOff)
        {
            var marks = outlets.Polarity;
            marks.Add(negative, positive, place);
            outlets.Polarity = marks;
        }
        else if (_figures.AtInput)
        {
            _inputPolarity.Add(negative, positive, place);
        }
        else
        {
            _polarity.Add(negative, positive, place);
        }
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
        var apart = before is Sign.NewLine or Sign.Comma or Sign.Semicolon or Sign.Colon or Sign.Open or Sign.Slash or Sign.Positive
            or Sign.Negative or Sign.Sleeve or Sign.Centre;
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
        for (var i = Math.Max(0, index - 3); i < Math.Min(_phrases.Length, index + 4); i++)
            Consider(_phrases[i].Kind, ref jack, ref coaxial);

        var plugs = PlugSizes.OfDiameter(millimetres, jack, coaxial);
        if (!plugs.IsEmpty)
            AddPlug(tokens, plugs);
    }

    private static void Consider(char sign, ref bool jack, ref bool coaxial)
    {
        jack |= sign == Sign.Jack;
        coaxial |= sign is Sign.Connector or Sign.Pin or Sign.Barrel or Sign.Centre or Sign.Drawing or PhraseKind.ContactSign
            or PhraseKind.SignContact;
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
