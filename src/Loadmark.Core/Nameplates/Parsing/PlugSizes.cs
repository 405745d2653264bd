using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Reads the sizes of connectors.</summary>
internal static class PlugSizes
{
    private static readonly Plug _smallJack = new("3.5 mm jack");

    /// <summary>The connector that two diameters or an inch size name; null when they name none.</summary>
    /// <param name="tokens">The phrase's tokens.</param>
    public static Plug? OfSize(ReadOnlySpan<Token> tokens)
    {
        Span<decimal> numbers = stackalloc decimal[3];
        var count = 0;
        var vouched = false;
        var slashed = false;
        var measured = false;
        var dashed = false;
        foreach (var token in tokens)
        {
            switch (token.Sign)
            {
                case Sign.Number when count < 3:
                    numbers[count++] = token.Value;
                    vouched |= token.Value != decimal.Truncate(token.Value);
                    break;
                case Sign.Millimetre:
                    vouched = true;
                    measured = true;
                    break;
                case Sign.Connector or Sign.Jack or Sign.Pin or Sign.Barrel or Sign.Diameter:
                    vouched = true;
                    break;
                case Sign.Slash:
                    slashed = true;
                    break;
                case Sign.Dash:
                    slashed = true;
                    dashed = true;
                    break;
                case Sign.Inch:
                    return numbers[0] == 1m && numbers[1] == 8m ? _smallJack : null;
                default:
                    break;
            }
        }

        var outer = Math.Max(numbers[0], numbers[1]);
        var inner = Math.Min(numbers[0], numbers[1]);

        // Two numbers with a dash, or bare ones with a slash, are anything, unless they are the two sizes everybody knows.
        if (slashed && (!measured || dashed) && (outer != 5.5m || inner is not (2.1m or 2.5m)))
            return null;

        // The coaxial connectors sold lie within these bounds (2.0x0.6 to 7.9x5.5); a third number is the length.
        var plausible = vouched && outer is >= 2m and <= 8m && inner is >= 0.5m and <= 5.5m && outer > inner
            && (count < 3 || numbers[2] >= 5m);
        return plausible ? new Plug($"{DecimalText.Write(outer)}x{DecimalText.Write(inner)}") : null;
    }

    /// <summary>The connectors that a single diameter can mean, given the words around it; empty when it means none.</summary>
    /// <param name="millimetres">The diameter.</param>
    /// <param name="jack">Whether the word jack or mini stands with it.</param>
    /// <param name="coaxial">Whether a word of a coaxial connector stands with it: barrel, pin, plug, centre.</param>
    public static ReadOnlySpan<Plug> OfDiameter(decimal millimetres, bool jack, bool coaxial) => millimetres switch
    {
        1.3m when coaxial => new[] { new Plug("3.5x1.3") },
        2.1m when jack || coaxial => new[] { Plug.Common },
        2.5m when coaxial => new[] { Plug.WidePin },
        2.5m when jack => new[] { Plug.WidePin, new Plug("2.5 mm jack") },
        3.5m when jack || coaxial => new[] { _smallJack },
        5.5m when jack || coaxial => new[] { Plug.Common, Plug.WidePin },
        _ => [],
    };
}
