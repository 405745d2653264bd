using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>A piece of gear, and what its readings come to.</summary>
/// <param name="Gear">The piece.</param>
/// <param name="Measured">The piece's readings, and what they come to.</param>
internal sealed record MeasuredGear(LibraryGear Gear, LoadMeasurements Measured);
