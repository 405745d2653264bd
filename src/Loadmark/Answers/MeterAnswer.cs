using Loadmark.Meters.Instruments;
using Loadmark.Meters.Scpi;

namespace Loadmark.Answers;

/// <summary>What a meter was asked and answered.</summary>
/// <param name="Address">Where it is.</param>
/// <param name="Identification">What it says it is.</param>
/// <param name="IsAmps">Whether it read amps; else volts.</param>
/// <param name="Reading">What it read.</param>
internal sealed record MeterAnswer(InstrumentAddress Address, Identification Identification, bool IsAmps, InstrumentReading Reading);
