namespace Loadmark.Simulation.Spreading;

/// <summary>What a figure comes to among samples, and in the worst case.</summary>
/// <typeparam name="TUnit">Its unit.</typeparam>
/// <param name="Low">5 % of the samples are below this; null where that cannot be told, or never happens.</param>
/// <param name="Median">Half of the samples are below this; null as above.</param>
/// <param name="High">95 % of the samples are below this; null as above.</param>
/// <param name="Corner">What it is in the worse of the two corners; null as above.</param>
/// <param name="Samples">The samples that tell: those in which the load ran, for the lowest voltage while it ran.</param>
public sealed record Percentiles<TUnit>(
    Quantity<TUnit>? Low, Quantity<TUnit>? Median, Quantity<TUnit>? High, Quantity<TUnit>? Corner, int Samples)
    where TUnit : struct, IUnit;
