using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Reads plug sizes: "5.5x2.1", "5.5 × 2,5 mm", "2.1 mm barrel", "3.5 mm jack".</summary>
internal static class PlugScanner
{
    /// <summary>Reads the plug that starts at <paramref name="at"/>, a number.</summary>
    /// <param name="tokens">The label.</param>
    /// <param name="at">Index of the number.</param>
    /// <param name="to">Index after the plug when there is one.</param>
    public static Plug? TryRead(TokenList tokens, int at, out int to)
    {
        to = at;
        var first = tokens[at].Value;
        var next = at + 1;
        var hasUnit = false;
        var isTimes = false;
        if (tokens.Meaning(next) == WordMeaning.Millimetre)
        {
            hasUnit = true;
            next++;
        }

        if (tokens.Kind(next) == TokenKind.Times || tokens.Meaning(next) is WordMeaning.Times or WordMeaning.MillimetreTimes)
        {
            isTimes = true;
            next++;
        }

        if ((isTimes || tokens.Kind(next) == TokenKind.Slash) && tokens.Kind(isTimes ? next : next + 1) == TokenKind.Number)
        {
            var second = isTimes ? next : next + 1;
            var end = second + 1;
            var isMillimetres = tokens.Meaning(end) == WordMeaning.Millimetre;
            if (isMillimetres)
                end++;
            if ((isTimes || isMillimetres || hasUnit) && IsSize(first) && IsSize(tokens[second].Value))
            {
                to = end;
                return Of(first, tokens[second].Value);
            }

            return null;
        }

        if (!hasUnit || isTimes)
            return InchJack(tokens, at, ref to);

        // Nothing else on a label measures 2.1 or 2.5 mm; other sizes need a word that says plug beside them.
        var word = tokens.Meaning(next);
        var before = tokens.Meaning(at - 1);
        if (IsPlugWord(word))
            next = SkipPlugWords(tokens, next);

        var plug = (first, word is WordMeaning.Jack || before is WordMeaning.Jack) switch
        {
            (2.1m, _) => Plug.Common,
            (2.5m, _) => Plug.WidePin,
            (3.5m, true) => new Plug("3.5 mm jack"),
            _ => (Plug?)null,
        };
        if (plug is not null)
            to = next;
        return plug;
    }

    /// <summary>Whether a word goes with plugs.</summary>
    public static bool IsPlugWord(WordMeaning meaning) => meaning is WordMeaning.Plug or WordMeaning.Jack or WordMeaning.Barrel;

    private static Plug? InchJack(TokenList tokens, int at, ref int to)
    {
        if (tokens[at].Value != 1 || tokens.Kind(at + 1) != TokenKind.Slash || tokens.Kind(at + 2) != TokenKind.Number || tokens[at + 2].Value != 8)
            return null;

        var next = at + 3;
        if (tokens.Kind(next) == TokenKind.Quote || tokens.Meaning(next) == WordMeaning.Inch)
            next++;
        if (tokens.Meaning(next) != WordMeaning.Jack)
            return null;

        to = SkipPlugWords(tokens, next);
        return new Plug("3.5 mm jack");
    }

    private static int SkipPlugWords(TokenList tokens, int index)
    {
        while (IsPlugWord(tokens.Meaning(index)))
            index++;
        return index;
    }

    private static bool IsSize(decimal millimetres) => millimetres is >= 0.5m and <= 12m;

    private static Plug Of(decimal one, decimal other) =>
        new($"{DecimalText.Write(Math.Max(one, other))}x{DecimalText.Write(Math.Min(one, other))}");
}
