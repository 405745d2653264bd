namespace Loadmark.Core.Readings;

/// <summary>What a meter showed, with the step of its last digit.</summary>
/// <typeparam name="TUnit">The unit of both.</typeparam>
/// <param name="Value">The value; below zero where the probes are the other way round.</param>
/// <param name="Step">One step of the last digit, over zero: of 9.02 V it is 0.01 V, of 210 mA 1 mA.</param>
public readonly record struct DisplayedValue<TUnit>(Quantity<TUnit> Value, Quantity<TUnit> Step)
    where TUnit : struct, IUnit
{
    /// <summary>Whether a sign was told, + or −: without one it is not known which way round the probes were.</summary>
    public bool IsSigned { get; init; }
}
