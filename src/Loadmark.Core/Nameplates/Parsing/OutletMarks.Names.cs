using System.Globalization;

namespace Loadmark.Core.Nameplates.Parsing;

/// <content>Outlets named by their connector or their channel.</content>
internal ref partial struct OutletMarks
{
    /// <summary>"USB-A 5 V": a connector that names the output with the voltage after it.</summary>
    private readonly bool IsPort(int i) =>
        SignAt(i) == Sign.Word && Lower(i) is "usb" && SignAt(i + 1) == Sign.Dash && i + 2 < _tokens.Length && _tokens[i + 2].Length == 1
            && char.IsAsciiLetter(_lower[_tokens[i + 2].Start])
        && IsFigureAt(SignAt(i + 3) == Sign.Colon ? i + 4 : i + 3, out var unit) && unit == Sign.Volt;

    /// <summary>Whether two connectors of different kinds name outputs.</summary>
    private readonly bool HasPorts()
    {
        var kind = '\0';
        for (var i = 0; i + 4 < _tokens.Length; i++)
        {
            if (!IsPort(i))
                continue;
            if (kind != '\0' && kind != _lower[_tokens[i + 2].Start])
                return true;
            kind = _lower[_tokens[i + 2].Start];
        }

        return false;
    }

    private readonly void MarkPort(int i)
    {
        _tokens[i].Sign = Sign.Ids;
        _tokens[i + 2].Sign = Sign.Ids;
    }

    /// <summary>"OUT 1-3", "OUTPUTS: 1-6 9 V"; after a colon only a list that begins with the first outlet.</summary>
    private void TryIdsAfter(int i)
    {
        var start = SkipHash(i + 1);
        if (SignAt(start) == Sign.Colon && SignAt(start + 1) == Sign.Number && _tokens[start + 1].Value == 1m)
            start++;

        // "OUT1-OUT4": the word stands again before the last.
        if (IsId(start) && SignAt(start + 1) is Sign.Dash or Sign.Tilde or Sign.To && SignAt(start + 2) == Sign.Output && IsId(start + 3)
            && _tokens[start + 3].Value > _tokens[start].Value)
            _tokens[start + 2].Sign = Sign.Name;
        TryIds(start, isTold: true);
    }

    /// <summary>"CH1 9 V … CH2 12 V": names that count on, each before a voltage.</summary>
    private readonly bool IsNumbered(int i)
    {
        if (!TryNumbered(i, out var name, out var number))
            return false;
        for (var j = i + 1; j < _tokens.Length && j < i + (3 * Reach); j++)
        {
            if (TryNumbered(j, out var other, out var next) && other.SequenceEqual(name) && next == number + 1)
                return true;
        }

        for (var j = i - 1; j >= 0 && j > i - (3 * Reach); j--)
        {
            if (_tokens[j].Sign == Sign.Ids && TryName(j, out var other, out var before) && other.SequenceEqual(name)
                && before == number - 1)
                return true;
        }

        return false;
    }

    /// <summary>A word for what a plug goes into, which numbers may name: "slots 1-4 9 V", "port 5 12 V".</summary>
    private readonly bool IsHolder(int i) =>
        SignAt(i) is Sign.Word or Sign.Connector or Sign.Jack
            && Lower(i) is "slot" or "slots" or "port" or "ports" or "channel" or "channels" or "socket" or "sockets" or "jack" or "jacks"
                or "buchse" or "buchsen" or "anschluss" or "anschlüsse" or "prise" or "prises" or "toma" or "tomas" or "presa" or "prese";

    /// <summary>"A: 9 V … B: 12 V": letters that count on from A, each with a colon and a voltage.</summary>
    private readonly bool IsLettered(int i)
    {
        if (!IsLetterOfList(i))
            return false;
        var letter = _text[_tokens[i].Start];
        for (var j = i + 1; j < _tokens.Length && j < i + (3 * Reach); j++)
        {
            if (IsLetterOfList(j) && _text[_tokens[j].Start] == letter + 1)
                return letter == 'A' || HasLetterBefore(i, letter);
        }

        return letter != 'A' && HasLetterBefore(i, letter);
    }

    private readonly bool HasLetterBefore(int i, char letter)
    {
        for (var j = i - 1; j >= 0 && j > i - (3 * Reach); j--)
        {
            if (_tokens[j] is { Sign: Sign.Ids, Length: 1 } && _text[_tokens[j].Start] == letter - 1)
                return true;
        }

        return false;
    }

    private readonly bool IsLetterOfList(int i) =>
        IsLetter(i) && SignAt(i + 1) == Sign.Colon
            && IsFigureAt(SignAt(i + 2) is Sign.Direct or Sign.Alternating ? i + 3 : i + 2, out var unit) && unit == Sign.Volt;

    private readonly bool TryNumbered(int i, out ReadOnlySpan<char> name, out int number) =>
        TryName(i, out name, out number) && _tokens[i].Sign == Sign.Identifier
            && IsFigureAt(SignAt(i + 1) == Sign.Colon ? i + 2 : i + 1, out var unit) && unit == Sign.Volt;

    /// <summary>One to four letters and one or two digits.</summary>
    private readonly bool TryName(int i, out ReadOnlySpan<char> name, out int number)
    {
        var text = Lower(i);
        var letters = 0;
        while (letters < text.Length && letters < 5 && char.IsAsciiLetter(text[letters]))
            letters++;
        name = text[..letters];
        number = 0;
        return letters is >= 1 and <= 4 && text.Length - letters is 1 or 2
            && int.TryParse(text[letters..], NumberStyles.None, CultureInfo.InvariantCulture, out number);
    }
}
