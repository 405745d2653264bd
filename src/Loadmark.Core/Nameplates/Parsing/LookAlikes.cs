namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Figures in which letters stand for the digits they look like ("l00mA", "3OOmA", "1BV", "300rnA"), as scanners and tired eyes
/// leave them. What they most likely say is a candidate, never a reading, unless the label's other figures bear it out.
/// </summary>
internal static class LookAlikes
{
    private const int MostDigits = 5;

    /// <summary>
    /// How many characters at the start of a run are digits or look like digits, and the number they make; 0 when there is no figure.
    /// </summary>
    /// <param name="run">Letters and digits without a gap.</param>
    /// <param name="value">The number, with letters taken as digits.</param>
    /// <param name="unitLength">How many characters of the run are the unit; 0 when it is to be read as it stands.</param>
    public static int NumberIn(ReadOnlySpan<char> run, out decimal value, out int unitLength)
    {
        value = 0m;
        unitLength = 0;
        var (length, digits, alike) = (0, 0, 0);
        while (length < run.Length && length <= MostDigits && DigitOf(run[length]) is var digit and >= 0)
        {
            value = (value * 10m) + digit;
            digits += char.IsAsciiDigit(run[length]) ? 1 : 0;
            alike += char.IsAsciiDigit(run[length]) ? 0 : 1;
            length++;
        }

        // "300rnA": an m fallen apart.
        var split = run[length..] is ['r', 'n', 'A', ..];
        unitLength = split ? 3 : 0;
        var leading = value > 0m && length > 1 && DigitOf(run[0]) == 0;

        // Without a digit it takes more likeness to be a figure: "lOOmA".
        digits += alike >= 3 && run[length..] is "mA" ? 1 : 0;
        return digits > 0 && length <= MostDigits && (alike > 0 || split) && !leading && length < run.Length ? length : 0;
    }

    /// <summary>Whether a value makes sense on a pedalboard; names made of letters and digits mostly do not.</summary>
    /// <param name="value">In volts, amperes or watts.</param>
    /// <param name="unit">The unit's sign.</param>
    public static bool IsLikely(decimal value, char unit) => unit switch
    {
        Sign.Volt => value is >= 1m and <= 48m,
        Sign.Ampere => value is >= 0.001m and <= 10m,
        Sign.Watt => value is >= 0.1m and <= 200m,
        _ => false,
    };

    private static int DigitOf(char character) => character switch
    {
        >= '0' and <= '9' => character - '0',
        'O' or 'o' => 0,
        'l' or 'I' => 1,
        'S' => 5,
        'B' => 8,
        _ => -1,
    };
}
