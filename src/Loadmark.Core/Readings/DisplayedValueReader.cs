namespace Loadmark.Core.Readings;

/// <summary>
/// Reads what a meter showed as it is typed from its display, all digits: <c>9.02</c>, <c>-9.02 V</c>, <c>210 mA</c>. Who leaves digits out
/// gets a coarser step and with it a wider band: the safe side.
/// </summary>
public static class DisplayedValueReader
{
    /// <summary>Reads the whole text as one value.</summary>
    /// <typeparam name="TUnit">The unit; it is what a bare number is in.</typeparam>
    /// <param name="text">A sign or none, a number with decimal point or comma, and the unit or none.</param>
    /// <param name="value">What was read; nothing when the result is false.</param>
    /// <param name="problem">Null when read; otherwise why not, as the end of a sentence.</param>
    public static bool TryRead<TUnit>(string text, out DisplayedValue<TUnit> value, out string? problem)
        where TUnit : struct, IUnit
    {
        ArgumentNullException.ThrowIfNull(text);
        value = default;
        var typed = text.AsSpan().Trim();
        if (typed.Equals("OL", StringComparison.OrdinalIgnoreCase) || typed.Equals("0L", StringComparison.OrdinalIgnoreCase))
        {
            problem = "the meter says that its range is exceeded; choose a larger one";
            return false;
        }

        var sign = SignOf(typed);
        var isNegative = sign == '-';
        var size = sign is null ? typed : typed[1..].TrimStart();
        if (isNegative && SignOf(size) is not null)
        {
            problem = "it has two signs";
            return false;
        }

        var isNumber = DecimalText.TryRead(size, out var number, out var length, out _);
        ReadOnlySpan<char> word = isNumber && length < size.Length ? size[length..].Trim() : TUnit.Symbol;
        if (!QuantityReader.TryRead<TUnit>(isNumber ? $"{size[..length]} {word}" : size, out var quantity, out problem))
            return false;
        UnitWords.TryFactor<TUnit>(word, out var factor);
        var step = factor;
        for (var place = 0; place < number.Scale; place++)
            step /= 10;
        value = new DisplayedValue<TUnit>(isNegative ? -1 * quantity : quantity, new Quantity<TUnit>(step))
        {
            IsSigned = sign is not null,
        };
        return true;
    }

    /// <summary>The sign that a text begins with: <c>+</c>, or <c>-</c> also for a minus sign and an en dash; null for none.</summary>
    /// <param name="typed">The text, without room before it.</param>
    public static char? SignOf(ReadOnlySpan<char> typed) => typed switch
    {
        ['+', ..] => '+',
        ['-' or '\u2212' or '\u2013', ..] => '-',
        _ => null,
    };
}
