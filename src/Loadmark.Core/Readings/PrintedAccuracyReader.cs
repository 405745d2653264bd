using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Readings;

/// <summary>
/// Reads a meter's accuracy as makers print it: <c>0.5 % + 2 digits</c>, <c>±(0.5% + 2)</c>, <c>0.5 % rdg + 3 dgt</c>,
/// <c>0.8% of reading + 0.1% of range</c>, <c>1.5 % + 3 counts of 0.1 mA</c>, <c>0.05 V</c>.
/// </summary>
public static class PrintedAccuracyReader
{
    private const int MostDigits = 10_000;

    /// <summary>Reads the whole text as an accuracy.</summary>
    /// <typeparam name="TUnit">The unit of what the meter measures.</typeparam>
    /// <param name="text">Shares, digits and amounts with + or ± between. A bare number behind a share is so many digits.</param>
    /// <param name="accuracy">What was read; nothing at all when the result is false.</param>
    /// <param name="fault">Null when read; otherwise what was not understood, and where.</param>
    public static bool TryRead<TUnit>(string text, out PrintedAccuracy<TUnit> accuracy, out AccuracyFault? fault)
        where TUnit : struct, IUnit
    {
        ArgumentNullException.ThrowIfNull(text);
        accuracy = default;
        var sum = default(PrintedAccuracy<TUnit>);
        var parts = PartsOf(text);
        fault = parts.Count == 0 ? new AccuracyFault(new Place(0, text.Length), "it is empty") : null;
        for (var part = 0; part < parts.Count && fault is null; part++)
        {
            if (TryPart(parts[part].In(text), isFirst: part == 0, ref sum) is { } problem)
                fault = new AccuracyFault(parts[part], problem);
        }

        if (fault is null && (sum.OfReading >= 1 || sum.OfRange >= 1))
            fault = new AccuracyFault(new Place(0, text.Length), "the shares come to 100 % or more");
        accuracy = fault is null ? sum : default;
        return fault is null;
    }

    /// <summary>The places of what is added up, without signs, brackets and spaces; empty ones between two signs stay.</summary>
    private static List<Place> PartsOf(string text)
    {
        var parts = new List<Place>();
        var whole = Trimmed(text, 0, text.Length, " \t±");
        if (text.AsSpan(whole.Start).StartsWith("+/-"))
            whole = Trimmed(text, whole.Start + 3, whole.End, " \t");
        if (whole.Length > 1 && text[whole.Start] == '(' && text[whole.End - 1] == ')')
            whole = Trimmed(text, whole.Start + 1, whole.End - 1, " \t±");
        if (whole.Length == 0)
            return parts;
        var start = whole.Start;
        for (var at = whole.Start; at <= whole.End; at++)
        {
            if (at < whole.End && text[at] is not ('+' or '±'))
                continue;
            parts.Add(Trimmed(text, start, at, " \t"));
            start = at + 1;
        }

        return parts;
    }

    private static Place Trimmed(string text, int start, int end, string signs)
    {
        while (start < end && signs.Contains(text[start]))
            start++;
        while (end > start && signs.Contains(text[end - 1]))
            end--;
        return new Place(start, end - start);
    }

    /// <summary>Adds one part; what is wrong with it, or null.</summary>
    private static string? TryPart<TUnit>(ReadOnlySpan<char> part, bool isFirst, ref PrintedAccuracy<TUnit> sum)
        where TUnit : struct, IUnit
    {
        var isNumber = DecimalText.TryRead(part, out var number, out var length, out _);
        var rest = isNumber ? part[length..].Trim() : part;
        if (rest.Contains('%'))
        {
            if (!isNumber || rest[0] != '%' || number >= 100)
                return $"'{part}' is not a share of the reading such as 1 %";
            return TryShare(number / 100, rest[1..], ref sum);
        }

        var word = rest[..(rest.IndexOf(' ') is >= 0 and var space ? space : rest.Length)];
        if (isNumber && (IsDigitWord(word) || (rest.IsEmpty && !isFirst && number == decimal.Truncate(number))))
            return TryDigits(number, part, rest[word.Length..].Trim(), ref sum);

        if (!QuantityReader.TryRead<TUnit>(part, out var amount, out var problem))
            return problem;
        sum = sum with { Plus = sum.Plus + amount };
        return null;
    }

    private static string? TryShare<TUnit>(decimal share, ReadOnlySpan<char> of, ref PrintedAccuracy<TUnit> sum)
        where TUnit : struct, IUnit
    {
        var what = of.Trim().ToString().Replace(".", "", StringComparison.Ordinal).ToUpperInvariant();
        what = what.StartsWith("OF ", StringComparison.Ordinal) ? what[3..].TrimStart() : what;
        what = what.StartsWith("THE ", StringComparison.Ordinal) ? what[4..].TrimStart() : what;
        switch (what)
        {
            case "" or "RDG" or "RD" or "READING" or "VALUE" or "MV":
                sum = sum with { OfReading = sum.OfReading + share };
                return null;
            case "RANGE" or "RNG" or "FS" or "FULL SCALE" or "FULLSCALE":
                sum = sum with { OfRange = sum.OfRange + share };
                return null;
            default:
                return $"'{of.Trim()}' is neither the reading nor the range";
        }
    }

    private static string? TryDigits<TUnit>(decimal number, ReadOnlySpan<char> part, ReadOnlySpan<char> of, ref PrintedAccuracy<TUnit> sum)
        where TUnit : struct, IUnit
    {
        if (number > MostDigits)
            return $"'{part}' does not begin with a number of counts";
        if (of.IsEmpty)
        {
            sum = sum with { Digits = sum.Digits + number };
            return null;
        }

        if (!of.StartsWith("of ", StringComparison.OrdinalIgnoreCase))
            return $"'{of}' after a number of digits says nothing";
        if (!QuantityReader.TryRead<TUnit>(of[3..], out var step, out var problem))
            return problem;
        sum = sum with { Plus = sum.Plus + (number * step) };
        return null;
    }

    private static bool IsDigitWord(ReadOnlySpan<char> word)
    {
        ReadOnlySpan<string> words = ["d", "dig", "digit", "digits", "dgt", "dgts", "count", "counts", "lsd"];
        foreach (var one in words)
        {
            if (word.TrimEnd('.').Equals(one, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }
}
