using Parlot;
using Parlot.Fluent;

namespace Loadmark.Core.Nameplates;

/// <summary>
/// The grammar of a label's phrases, over the alphabet of <see cref="Sign"/>. It tells where a phrase begins and ends;
/// the tokens in it carry the values. Every repetition is bounded, which keeps reading linear in the label's length.
/// </summary>
internal sealed class PhraseGrammar
{
    /// <summary>The most alternatives of one figure ("9/12/15/18/24 V"); labels have up to seven.</summary>
    private const int MostAlternatives = 12;

    private readonly Parser<char> _phrase;

    private PhraseGrammar()
    {
        _phrase = Parsers.OneOf(
            BetweenTwo(Sign.Volt, PhraseKind.Volts),
            BetweenTwo(Sign.Ampere, PhraseKind.Amps),
            Plug(),
            Figure(Sign.Volt, PhraseKind.Volts),
            Figure(Sign.Ampere, PhraseKind.Amps),
            Figure(Sign.Watt, PhraseKind.Watts),
            Figure(Sign.Hertz, PhraseKind.Hertz),
            Diameter(),
            ContactThenSign(),
            SignThenContact(),
            Side(),
            Title());
    }

    /// <summary>The one grammar; it holds no state.</summary>
    public static PhraseGrammar Instance { get; } = new();

    /// <summary>Splits a label into phrases.</summary>
    /// <param name="signs">One sign for each token.</param>
    /// <param name="phrases">Room for as many phrases as there are tokens.</param>
    /// <returns>How many phrases there are; together they cover every token once.</returns>
    public int Split(string signs, Span<Phrase> phrases)
    {
        var context = new ParseContext(new Scanner(signs));
        var cursor = context.Scanner.Cursor;
        var result = default(ParseResult<char>);
        var count = 0;
        while (!cursor.Eof)
        {
            var start = cursor.Offset;
            if (StartsPhrase(cursor.Current) && _phrase.Parse(context, ref result) && cursor.Offset > start)
            {
                phrases[count++] = new Phrase(result.Value, start, cursor.Offset);
                continue;
            }

            cursor.ResetPosition(start);
            phrases[count++] = new Phrase(cursor.Current, start, start + 1);
            cursor.Advance();
        }

        return count;
    }

    private static bool StartsPhrase(char sign) => sign is Sign.Number or Sign.Between or Sign.Centre or Sign.Pin or Sign.Sleeve or Sign.Barrel
        or Sign.Positive or Sign.Negative or Sign.Plus or Sign.Dash or Sign.Connector or Sign.Jack or Sign.Input or Sign.Output or Sign.Mains or Sign.Alternating;

    private static Parser<char> One(char sign) => Parsers.Literals.Char(sign);

    private static Parser<char> Any(params ReadOnlySpan<char> signs) => Parsers.OneOf([.. signs.ToArray().Select(One)]);

    private static Parser<char> Maybe(Parser<char> parser) => parser.Else(Sign.Point);

    private static Parser<char> Row(params ReadOnlySpan<Parser<char>> parsers)
    {
        var whole = parsers[0];
        foreach (var parser in parsers[1..])
            whole = whole.SkipAnd(parser);
        return whole;
    }

    /// <summary>Up to <paramref name="most"/> times, possibly none.</summary>
    private static Parser<char> Repeat(Parser<char> parser, int most)
    {
        var whole = Maybe(parser);
        for (var i = 1; i < most; i++)
            whole = Maybe(Row(parser, whole));
        return whole;
    }

    private static Parser<char> RangeMark() => Any(Sign.Dash, Sign.Dots, Sign.Tilde, Sign.To);

    private static Parser<char> Bare() => Row(One(Sign.Number), Maybe(Row(RangeMark(), One(Sign.Number))));

    /// <summary>9 V, 9-18 V, 9 V to 18 V.</summary>
    private static Parser<char> Value(char unit) => Row(
        One(Sign.Number),
        Parsers.OneOf(
            Row(Maybe(One(unit)), RangeMark(), One(Sign.Number), One(unit)),
            One(unit)));

    private static Parser<char> BetweenTwo(char unit, char kind) =>
        Row(One(Sign.Between), One(Sign.Number), Maybe(One(unit)), One(Sign.And), One(Sign.Number), One(unit)).Then(kind);

    /// <summary>A value or several to choose from: 9/12/18 V, 9 V or 12 V, 9, 12 or 18 V.</summary>
    private static Parser<char> Figure(char unit, char kind)
    {
        // A comma between bare numbers lists them only where an "or" closes the list: in "Class 2, 9 V" it does not.
        var commas = Row(
            Bare(),
            Repeat(Row(One(Sign.Comma), Bare()), MostAlternatives),
            Maybe(One(Sign.Comma)),
            One(Sign.Or));
        var open = Row(Bare(), Any(Sign.Slash, Sign.Or));
        var separator = Row(
            Maybe(Any(Sign.Direct, Sign.Alternating, Sign.Tilde)),
            Parsers.OneOf(Row(One(Sign.Comma), Maybe(One(Sign.Or))), Any(Sign.Slash, Sign.Or)));
        var value = Value(unit);
        return Row(
            Parsers.OneOf(Row(Parsers.OneOf(open, commas), Repeat(open, MostAlternatives), value), value),
            Repeat(Row(separator, value), MostAlternatives)).Then(kind);
    }

    private static Parser<char> Contact() => Parsers.OneOf(
        Row(Any(Sign.Centre, Sign.Pin), Repeat(Any(Sign.Pin, Sign.Centre, Sign.Quiet, Sign.Connector), 3)),
        Row(Any(Sign.Sleeve, Sign.Barrel), Repeat(Any(Sign.Sleeve, Sign.Barrel, Sign.Quiet), 3)));

    private static Parser<char> AnySign() => Any(Sign.Positive, Sign.Negative, Sign.Plus, Sign.Dash);

    private static Parser<char> SignAfter() => Parsers.OneOf(
        Row(One(Sign.Dash), Any(Sign.Positive, Sign.Negative)),
        AnySign(),
        Row(Any(Sign.Colon, Sign.Direct, Sign.Point, Sign.Open, Sign.Slash), Maybe(Any(Sign.Quiet, Sign.Open)), AnySign()));

    private static Parser<char> ContactThenSign() =>
        Row(Contact(), SignAfter()).Then(PhraseKind.ContactSign);

    /// <summary>The sign first, unless another one follows that goes with the contact ("9 V - centre positive").</summary>
    private static Parser<char> SignThenContact() =>
        Row(AnySign(), Maybe(Any(Sign.Dash, Sign.Colon, Sign.Point)), Contact())
            .WhenNotFollowedBy(SignAfter().WhenNotFollowedBy(Contact()))
            .Then(PhraseKind.SignContact);

    private static Parser<char> ConnectorWords() => Repeat(Any(Sign.Connector, Sign.Jack, Sign.Pin, Sign.Barrel, Sign.Centre), 4);

    /// <summary>Words for the connector after its size; a contact that a sign follows is the start of a polarity.</summary>
    private static Parser<char> ConnectorTail() => Repeat(
        Parsers.OneOf(
            Any(Sign.Connector, Sign.Jack),
            Any(Sign.Pin, Sign.Barrel).WhenNotFollowedBy(SignAfter())),
        4);

    private static Parser<char> Plug()
    {
        var diameter = Row(One(Sign.Number), Maybe(One(Sign.Millimetre)), Maybe(One(Sign.Quiet)));
        var crossed = Row(
            diameter,
            One(Sign.Times),
            One(Sign.Number),
            Maybe(Row(One(Sign.Times), One(Sign.Number))),
            Maybe(One(Sign.Millimetre)),
            Maybe(One(Sign.Quiet)))
            .WhenNotFollowedBy(Any(Sign.Volt, Sign.Ampere, Sign.Watt, Sign.Hertz));
        var slashed = Row(One(Sign.Number), Maybe(One(Sign.Millimetre)), One(Sign.Slash), One(Sign.Number), One(Sign.Millimetre));
        var size = Parsers.OneOf(crossed, slashed).Then(PhraseKind.PlugSize);
        var inches = Row(One(Sign.Number), One(Sign.Slash), One(Sign.Number), One(Sign.Inch), Repeat(One(Sign.Connector), 2), One(Sign.Jack))
            .Then(PhraseKind.InchJack);
        var sized = Parsers.OneOf(size, inches).AndSkip(ConnectorTail());
        return Parsers.OneOf(sized, Row(ConnectorWords(), Maybe(Any(Sign.Colon, Sign.Dash)), sized));
    }

    private static Parser<char> Diameter()
    {
        var size = Row(One(Sign.Number), One(Sign.Millimetre), ConnectorTail());
        return Parsers.OneOf(size, Row(ConnectorWords(), Maybe(Any(Sign.Colon, Sign.Dash)), size)).Then(PhraseKind.Diameter);
    }

    private static Parser<char> Side()
    {
        var numbers = Row(
            One(Sign.Number),
            Repeat(Row(Any(Sign.Dash, Sign.Slash, Sign.Comma, Sign.And, Sign.To, Sign.Or), One(Sign.Number)), MostAlternatives));
        var named = numbers.WhenFollowedBy(Any(Sign.Colon, Sign.Number, Sign.Direct, Sign.Alternating, Sign.Open));
        return Row(Any(Sign.Input, Sign.Output, Sign.Mains), Maybe(named)).Then(PhraseKind.Side);
    }

    private static Parser<char> Title() =>
        Row(
            One(Sign.Alternating),
            Maybe(Any(Sign.Slash, Sign.Dash, Sign.To, Sign.And, Sign.Or)),
            Maybe(One(Sign.Direct)),
            Repeat(One(Sign.Quiet), 3),
            One(Sign.Adaptor)).Then(PhraseKind.Title);
}
