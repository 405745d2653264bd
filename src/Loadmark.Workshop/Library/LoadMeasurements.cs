using System.Collections.Immutable;
using Loadmark.Core.Readings;
using Loadmark.Storage.Gear;

namespace Loadmark.Workshop.Library;

/// <summary>The readings of a load, and what they come to.</summary>
/// <param name="Readings">All readings, struck out ones too, the oldest first.</param>
/// <param name="Running">What the running currents come to; null when there are none.</param>
/// <param name="Starting">What the starting currents come to; null when there are none.</param>
public sealed record LoadMeasurements(ImmutableArray<StoredReading> Readings, MeasuredDraw? Running, MeasuredDraw? Starting);
