namespace Loadmark.Circuits.Devices;

/// <summary>An ideal current source. Its current flows from plus to minus through the source, as in SPICE.</summary>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node that the current leaves.</param>
/// <param name="Minus">Node that the current enters.</param>
/// <param name="Waveform">The device's current over time, in amperes.</param>
/// <param name="SmallSignal">The device's amplitude in small-signal analysis, in amperes; 0 is open there.</param>
public sealed record CurrentSource(
    string Name, string Plus, string Minus, SourceWaveform Waveform, double SmallSignal = 0) : Device(Name, Plus, Minus)
{
    /// <summary>A source of constant current.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Node that the current leaves.</param>
    /// <param name="minus">Node that the current enters.</param>
    /// <param name="amps">Its current, A.</param>
    public CurrentSource(string name, string plus, string minus, double amps)
        : this(name, plus, minus, new ConstantWaveform(amps))
    {
    }
}
