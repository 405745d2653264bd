namespace Loadmark.Meters.Scpi;

/// <summary>One value that an instrument sent.</summary>
/// <param name="Value">The value in volts or amperes; 0 unless it was measured.</param>
/// <param name="State">Whether it was measured.</param>
/// <param name="Text">The value as it was sent, with all its digits.</param>
public readonly record struct InstrumentReading(double Value, ReadingState State, string Text)
{
    private const double Infinity = 9.9e37;
    private const double NotANumber = 9.91e37;
    private const double MostOfAnyMeter = 1e12;

    /// <summary>The value in volts or amperes, to 15 digits; null where nothing was measured, or more than any meter measures.</summary>
    public decimal? Figure => State == ReadingState.Measured && Math.Abs(Value) < MostOfAnyMeter ? (decimal)Value : null;

    /// <summary>Reads an answer that is one value; of several separated by commas the first.</summary>
    /// <param name="answer">The answer, without its end of line.</param>
    /// <param name="reading">What was read.</param>
    public static bool TryRead(string answer, out InstrumentReading reading)
    {
        ArgumentNullException.ThrowIfNull(answer);
        reading = default;
        var text = answer.Split(',')[0].Trim();
        var state = text.ToUpperInvariant() switch
        {
            "NAN" => ReadingState.NotANumber,
            "INF" or "+INF" or "-INF" or "NINF" or "INFINITY" or "NINFINITY" => ReadingState.OverRange,
            _ => ReadingState.Measured,
        };
        if (state == ReadingState.Measured)
        {
            // What stands behind the number may be its unit, and nothing else.
            if (ScpiNumber.Read(text, out var value, out var length) == NumberForm.None || !IsUnit(text.AsSpan(length)))
                return false;

            // Told apart by the half of what is between them, since instruments round: 9.9000E+37, 9.91E37.
            var size = Math.Abs(value);
            state = size < Infinity * 0.9999 ? ReadingState.Measured
                : size >= (Infinity + NotANumber) / 2 && size < NotANumber * 1.0001 ? ReadingState.NotANumber
                : ReadingState.OverRange;
            reading = new InstrumentReading(state == ReadingState.Measured ? value : 0, state, text);
            return true;
        }

        reading = new InstrumentReading(0, state, text);
        return true;
    }

    private static bool IsUnit(ReadOnlySpan<char> text)
    {
        foreach (var character in text.Trim())
        {
            if (!char.IsAsciiLetter(character))
                return false;
        }

        return true;
    }
}
