namespace Loadmark.Planning.Buying;

/// <summary>How a load may be fed from an outlet.</summary>
/// <param name="Reverses">Whether it takes a reversing lead.</param>
/// <param name="LeastVolts">The lowest voltage the outlet can be set to for it.</param>
internal readonly record struct KindFit(bool Reverses, decimal LeastVolts);
