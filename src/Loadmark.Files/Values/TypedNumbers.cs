using Loadmark.Core.Nameplates;
using Loadmark.Files.Texts;

namespace Loadmark.Files.Values;

/// <summary>Compares the numbers of a text with the figures that were read from it, so that none is passed over.</summary>
internal static class TypedNumbers
{
    /// <summary>
    /// The first number of a text that is none of the voltages, frequencies, currents and powers that were read; null when all are.
    /// </summary>
    public static string? Unheard(string text, Nameplate reading)
    {
        var figures = FiguresOf(reading);
        for (var start = 0; start < text.Length; start++)
        {
            if (!char.IsAsciiDigit(text[start])
                && !(
                    text[start] == '.' && start + 1 < text.Length && char.IsAsciiDigit(text[start + 1])
                        && (start == 0 || text[start - 1] != '.')))
                continue;
            var end = EndOf(text, start);

            // Millivolts and milliamps are read as volts and amps.
            if (!PlainNumber.TryRead(text.AsSpan(start, end - start), out var number)
                || !(figures.Contains(number) || figures.Contains(number / 1000)))
                return text[start..end];
            start = end;
        }

        return null;
    }

    private static int EndOf(string text, int start)
    {
        var end = start;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        if (end + 1 >= text.Length || text[end] is not ('.' or ',') || !char.IsAsciiDigit(text[end + 1]))
            return end;
        end++;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return end;
    }

    private static HashSet<decimal> FiguresOf(Nameplate reading)
    {
        var figures = new HashSet<decimal>();
        foreach (var mode in reading.Modes)
        {
            Add(mode.Volts);
            Add(mode.Hertz);
        }

        if (reading.Mains is not { } mains)
            return figures;
        Add(mains.Volts);
        Add(mains.Hertz);
        foreach (var choice in mains.Choices)
            Add<Volt>(choice);
        if (mains.Amps is { } amps)
            figures.Add(amps.Value);
        if (mains.Watts is { } watts)
            figures.Add(watts.Value);
        if (mains.VoltAmps is { } voltAmps)
            figures.Add(voltAmps.Value);
        return figures;

        void Add<TUnit>(QuantityRange<TUnit>? range)
            where TUnit : struct, IUnit
        {
            if (range is not { } ends)
                return;
            figures.Add(ends.Low.Value);
            figures.Add(ends.High.Value);
        }
    }
}
