namespace Loadmark.Core.Quantities;

/// <summary>
/// The volt-ampere, unit of apparent power: the product of effective voltage and effective current (IEC 60050, 131-11-41, from memory). It
/// is a watt by its dimensions and is kept apart, since of alternating current it says nothing of the power.
/// </summary>
public readonly struct VoltAmpere : IUnit
{
    /// <inheritdoc/>
    public static string Symbol => "VA";

    /// <inheritdoc/>
    public static bool TakesPrefix => false;

    /// <inheritdoc/>
    public static decimal Largest => 100_000m;
}
