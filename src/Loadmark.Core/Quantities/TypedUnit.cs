namespace Loadmark.Core.Quantities;

/// <summary>The <see cref="Unit"/> of a unit's type.</summary>
/// <typeparam name="TUnit">The unit.</typeparam>
internal sealed class TypedUnit<TUnit> : Unit
    where TUnit : struct, IUnit
{
    /// <inheritdoc/>
    public override string Symbol => TUnit.Symbol;

    /// <inheritdoc/>
    public override object? Read(string text, out string? problem) =>
        QuantityReader.TryRead<TUnit>(text, out var quantity, out problem) ? quantity : null;

    /// <inheritdoc/>
    public override decimal ValueOf(object quantity) => ((Quantity<TUnit>)quantity).Value;

    /// <inheritdoc/>
    public override string ExactText(object quantity) => ((Quantity<TUnit>)quantity).ToExactString();
}
