namespace Loadmark.Planning.Buying;

/// <summary>How a load may be fed from an outlet.</summary>
/// <param name="Reverses">Whether it takes a reversing lead.</param>
/// <param name="Adapts">Whether it takes a lead that is not plain: a reversing one, or one with another plug.</param>
/// <param name="LeastVolts">The lowest voltage the outlet can be set to for it.</param>
internal readonly record struct KindFit(bool Reverses, bool Adapts, decimal LeastVolts);
