namespace Loadmark.Circuits.Devices;

/// <summary>Where a device between two nodes meets the equations. Ground has a place of its own behind the last unknown.</summary>
/// <param name="Plus">Place of the positive node.</param>
/// <param name="Minus">Place of the negative node.</param>
/// <param name="PlusPlus">Index of the value (plus, plus).</param>
/// <param name="PlusMinus">Index of the value (plus, minus).</param>
/// <param name="MinusPlus">Index of the value (minus, plus).</param>
/// <param name="MinusMinus">Index of the value (minus, minus).</param>
internal readonly record struct PairSlots(int Plus, int Minus, int PlusPlus, int PlusMinus, int MinusPlus, int MinusMinus);
