namespace Loadmark.Core.Quantities;

/// <summary>A range of a quantity, both ends included; a single value is a range whose ends are equal.</summary>
/// <typeparam name="TUnit">The unit of both ends.</typeparam>
/// <param name="Low">The lowest value; never above <paramref name="High"/> when made by a reader of this program.</param>
/// <param name="High">The highest value.</param>
public readonly record struct QuantityRange<TUnit>(Quantity<TUnit> Low, Quantity<TUnit> High)
    where TUnit : struct, IUnit
{
    /// <summary>Whether both ends are the same value.</summary>
    public bool IsSingle => Low == High;

    /// <summary>A range of one value.</summary>
    public static QuantityRange<TUnit> Single(Quantity<TUnit> value) => new(value, value);

    /// <summary>Whether <paramref name="value"/> lies in the range, ends included.</summary>
    public bool Contains(Quantity<TUnit> value) => Low <= value && value <= High;

    /// <summary>The range as a person writes it: <c>9 V</c> or <c>9 V to 18 V</c>.</summary>
    public override string ToString() => IsSingle ? Low.ToString() : $"{Low} to {High}";
}
