using System.Globalization;

namespace Loadmark.Core.Quantities;

/// <summary>
/// A number with its SI unit. Decimal, not binary: printed figures are decimal, and 0.165 + 0.28 + 0.055 must be
/// the 0.5 that a limit of 0.5 still carries (see docs/decisions/0002-decimal-quantities.md).
/// </summary>
/// <typeparam name="TUnit">The unit of <paramref name="Value"/>.</typeparam>
/// <param name="Value">The value in <typeparamref name="TUnit"/>, without prefix: 300 mA is 0.3.</param>
public readonly record struct Quantity<TUnit>(decimal Value) : IComparable<Quantity<TUnit>>
    where TUnit : struct, IUnit
{
    /// <summary>No amount at all. Not "unknown": an unknown quantity is null.</summary>
    public static Quantity<TUnit> Zero => default;

    /// <summary>The sum of two quantities.</summary>
    public static Quantity<TUnit> operator +(Quantity<TUnit> left, Quantity<TUnit> right) => new(left.Value + right.Value);

    /// <summary>The difference of two quantities; may be below zero.</summary>
    public static Quantity<TUnit> operator -(Quantity<TUnit> left, Quantity<TUnit> right) => new(left.Value - right.Value);

    /// <summary>A quantity scaled by a plain number.</summary>
    public static Quantity<TUnit> operator *(Quantity<TUnit> quantity, decimal factor) => new(quantity.Value * factor);

    /// <summary>A quantity scaled by a plain number.</summary>
    public static Quantity<TUnit> operator *(decimal factor, Quantity<TUnit> quantity) => quantity * factor;

    /// <summary>A quantity divided by a plain number.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="divisor"/> is zero.</exception>
    public static Quantity<TUnit> operator /(Quantity<TUnit> quantity, decimal divisor) => new(quantity.Value / divisor);

    /// <summary>The ratio of two quantities of one kind, a plain number.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="right"/> is zero.</exception>
    public static decimal operator /(Quantity<TUnit> left, Quantity<TUnit> right) => left.Value / right.Value;

    /// <summary>Whether the left quantity is the smaller.</summary>
    public static bool operator <(Quantity<TUnit> left, Quantity<TUnit> right) => left.Value < right.Value;

    /// <summary>Whether the left quantity is the larger.</summary>
    public static bool operator >(Quantity<TUnit> left, Quantity<TUnit> right) => left.Value > right.Value;

    /// <summary>Whether the left quantity is no larger.</summary>
    public static bool operator <=(Quantity<TUnit> left, Quantity<TUnit> right) => left.Value <= right.Value;

    /// <summary>Whether the left quantity is no smaller.</summary>
    public static bool operator >=(Quantity<TUnit> left, Quantity<TUnit> right) => left.Value >= right.Value;

    /// <summary>The smaller of two quantities.</summary>
    public static Quantity<TUnit> Min(Quantity<TUnit> left, Quantity<TUnit> right) => left < right ? left : right;

    /// <summary>The larger of two quantities.</summary>
    public static Quantity<TUnit> Max(Quantity<TUnit> left, Quantity<TUnit> right) => left > right ? left : right;

    /// <inheritdoc/>
    public int CompareTo(Quantity<TUnit> other) => Value.CompareTo(other.Value);

    /// <summary>The quantity as a person writes it: at most four significant digits, with a prefix where one helps.</summary>
    /// <example><c>300 mA</c>, <c>9 V</c>, <c>1.2 A</c>, <c>0.22 mm²</c>.</example>
    public override string ToString() => QuantityText.Short(Value, TUnit.Symbol, TUnit.TakesPrefix);

    /// <summary>
    /// The quantity in full, unrounded. <see cref="QuantityReader"/> reads it back as the same value if it has at most
    /// 15 digits, as everything that was typed or printed has; a quotient may have more.
    /// </summary>
    public string ToExactString() => QuantityText.Exact(Value, TUnit.Symbol);

    /// <summary>The bare number in the unit, all digits, invariant culture.</summary>
    public string ToNumberString() => QuantityText.Plain(Value).ToString(CultureInfo.InvariantCulture);
}
