using Loadmark.Core.Nameplates;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;

namespace Loadmark.Files.Values;

/// <summary>
/// Reads a voltage that is typed for a key, in the words of a label, as whole: a label may say anything, and what is not understood of it
/// is kept and told; here nothing else may stand.
/// </summary>
internal static class TypedVoltage
{
    private const string Signs = " \t,;/~=⎓-\u2010\u2011\u2012\u2013\u2014\u2212\u2026";

    private const string Joints = " \t,;/-\u2010\u2011\u2012\u2013\u2014\u2212\u2026";

    private const string Positive = "it must be more than zero, and a voltage only";

    private static readonly string[] Words = ["v", "volt", "volts", "mv", "vdc", "vac", "dc", "ac", "to", "or", "and", "hz"];

    private static readonly string[] MainsWords = [.. Words, "a", "ma", "w", "va", "input", "mains"];

    /// <summary>A low voltage, several, or a range.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="problem">Why it cannot be read, as the end of a sentence; null when it can.</param>
    /// <returns>The reading; null when it cannot be read.</returns>
    public static Nameplate? Read(string text, out string? problem)
    {
        problem = ProblemOf(text, Words);
        if (problem is not null)
            return null;
        var reading = NameplateReader.Read(text);
        problem = ProblemOf(reading, text) ?? (reading switch
        {
            { Mains: not null } => "that is the voltage of the mains",
            { Modes.Length: 0 } => "no voltage can be made out in it",
            { Form.State: FieldState.Ambiguous or FieldState.Unreadable } => "AC or DC? Write one of them",
            _ when reading.Modes.Any(static mode => mode is not { Volts.Low.Value: > 0, Amps: null, Watts: null }) => Positive,
            _ => null,
        });
        return problem is null ? reading : null;
    }

    /// <summary>A mains input: its voltages, and its frequency, current and power where they are typed too.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="problem">Why it cannot be read, as the end of a sentence; null when it can.</param>
    /// <returns>The reading; null when it cannot be read.</returns>
    public static Nameplate? ReadMains(string text, out string? problem)
    {
        problem = ProblemOf(text, MainsWords) ?? (text.AsSpan().ContainsAny('⎓', '=') ? "the mains is alternating" : null);
        if (problem is not null)
            return null;
        var reading = NameplateReader.Read(text);
        problem = ProblemOf(reading, text) ?? (reading switch
        {
            { Modes.Length: > 0 } => "not all of it is the voltage of a mains",
            { Mains.Volts: null } or { Mains: null } => "no mains voltage can be made out in it",
            { Mains.Volts.Low.Value: <= 0 } => Positive,
            _ => null,
        });
        return problem is null ? reading : null;
    }

    /// <summary>What is wrong with the text whatever its words come to; null when nothing is.</summary>
    private static string? ProblemOf(string text, string[] words)
    {
        var trimmed = text.AsSpan().Trim();
        if (trimmed.IsEmpty)
            return "it is empty";
        if (trimmed[0] is '-' or '\u2212' or '\u2013')
            return "a figure below zero makes no sense here";
        if (trimmed[0] == '+')
            trimmed = trimmed[1..].TrimStart();
        if (!trimmed.ContainsAnyInRange('0', '9'))
            return "there is no number in it";
        if (PlainNumber.TryRead(trimmed, out _))
            return "the unit is missing (V)";
        if (HasLongNumber(trimmed))
            return "it is more than anything on a pedalboard has";
        if (Stranger(trimmed, words) is { } stranger)
            return $"'{ErrorList.Quote(stranger)}' has no place in it";
        return Joints.Contains(trimmed[0], StringComparison.Ordinal) || Joints.Contains(trimmed[^1], StringComparison.Ordinal)
            ? "it begins or ends halfway"
            : null;
    }

    /// <summary>What is wrong with a reading, whatever it is of; null when nothing is.</summary>
    private static string? ProblemOf(Nameplate reading, string text) => reading switch
    {
        { AmbiguousVolts.State: FieldState.Ambiguous } => "the comma may mean a decimal point or thousands; write the number without it",
        { AmbiguousVolts.State: FieldState.Unreadable } => Positive,
        { Unread: [var unread, ..] } => $"'{ErrorList.Quote(unread.Text)}' in it cannot be read",
        { Outlets.Length: > 0 } or { EachOutlet: true } or { Total: not null } or { Input: not null } or { Conflicts.Length: > 0 } =>
            "it says more than that",
        _ => TypedNumbers.Unheard(text, reading) is { } number ? $"'{number}' in it cannot be read" : null,
    };

    /// <summary>
    /// Whether more than four digits stand in a row. 1000 V is the most that any quantity takes; more is a slip, whatever stands round it.
    /// </summary>
    private static bool HasLongNumber(ReadOnlySpan<char> text)
    {
        var digits = 0;
        foreach (var character in text)
        {
            digits = char.IsAsciiDigit(character) ? digits + 1 : 0;
            if (digits > 4)
                return true;
        }

        return false;
    }

    /// <summary>The first word or sign that is no part of a voltage; null when there is none.</summary>
    private static string? Stranger(ReadOnlySpan<char> text, string[] words)
    {
        for (var start = 0; start < text.Length;)
        {
            var end = start;
            while (end < text.Length && char.IsLetter(text[end]))
                end++;
            if (end > start)
            {
                var word = text[start..end].ToString();
                var isCurrent = word is "d" or "D" or "a" or "A" && text[end..].StartsWith(".c.", StringComparison.OrdinalIgnoreCase);
                if (!isCurrent && !words.Contains(word, StringComparer.OrdinalIgnoreCase))
                    return word;
                start = isCurrent ? end + 3 : end;
                continue;
            }

            // A point stands in a number, or is one of several between two. A number that begins with a comma may be two things.
            var isPoint = text[start] == '.' && start + 1 < text.Length && (text[start + 1] == '.' || char.IsAsciiDigit(text[start + 1]));
            var isOpenComma = text[start] == ',' && start + 1 < text.Length && char.IsAsciiDigit(text[start + 1])
                && (start == 0 || !char.IsAsciiDigit(text[start - 1]));
            if (isOpenComma || (!isPoint && !char.IsAsciiDigit(text[start]) && !Signs.Contains(text[start], StringComparison.Ordinal)))
                return text[start].ToString();
            start++;
        }

        return null;
    }
}
