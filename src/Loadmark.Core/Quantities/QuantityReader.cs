namespace Loadmark.Core.Quantities;

/// <summary>
/// Reads one typed quantity with its unit: <c>300mA</c>, <c>0,3 A</c>, <c>1.2 A</c>. For the free text of labels,
/// which may hold anything, there is the nameplate reader instead.
/// </summary>
public static class QuantityReader
{
    /// <summary>Reads the whole text as one quantity of <typeparamref name="TUnit"/>, zero or more.</summary>
    /// <param name="text">A number with decimal point or comma, the unit with an SI prefix, with or without a space.</param>
    /// <param name="quantity">What was read; zero when the result is false.</param>
    /// <param name="problem">Null when read; otherwise why not, as the end of a sentence: "a number is missing".</param>
    /// <returns>Whether the text is such a quantity, finite, not negative and not over <see cref="IUnit.Largest"/>.</returns>
    public static bool TryRead<TUnit>(ReadOnlySpan<char> text, out Quantity<TUnit> quantity, out string? problem)
        where TUnit : struct, IUnit
    {
        quantity = default;
        text = text.Trim();
        if (text.Length > 0 && text[0] == '+')
            text = text[1..].TrimStart();
        if (text.Length > 0 && text[0] is '-' or '\u2212' or '\u2013')
        {
            problem = "a figure below zero makes no sense here";
            return false;
        }

        if (!DecimalText.TryRead(text, out var number, out var length, out var grouping))
        {
            problem = text.IsEmpty ? "it is empty"
                : char.IsAsciiDigit(text[0]) ? "its number has too many digits"
                : "it does not start with a number";
            return false;
        }

        var word = text[length..].Trim();
        if (word.IsEmpty)
        {
            problem = $"the unit is missing ({Symbol<TUnit>()})";
            return false;
        }

        if (grouping)
        {
            problem = "the comma may mean a decimal point or thousands; write the number without it";
            return false;
        }

        if (!UnitWords.TryFactor<TUnit>(word, out var factor))
        {
            problem = word[0] is 'e' or 'E' && word.Length > 1 && (char.IsAsciiDigit(word[1]) || word[1] is '+' or '-')
                ? "numbers with an exponent are not read; write it out"
                : $"'{Cut(word)}' is not a unit that fits here ({Symbol<TUnit>()})";
            return false;
        }

        var value = number * factor;
        if (value > TUnit.Largest)
        {
            problem = $"it is more than anything on a pedalboard has (at most {new Quantity<TUnit>(TUnit.Largest)})";
            return false;
        }

        quantity = new Quantity<TUnit>(value);
        problem = null;
        return true;
    }

    /// <summary>The unit as people write it: nobody gives the size of a conductor in square metres.</summary>
    private static string Symbol<TUnit>()
        where TUnit : struct, IUnit => TUnit.Symbol == "m²" ? "mm²" : TUnit.Symbol;

    private static string Cut(ReadOnlySpan<char> word) => word.Length <= 20 ? word.ToString() : $"{word[..20]}…";
}
