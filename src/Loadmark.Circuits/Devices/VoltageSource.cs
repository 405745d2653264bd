namespace Loadmark.Circuits.Devices;

/// <summary>An ideal voltage source without resistance.</summary>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of its positive terminal.</param>
/// <param name="Minus">Node of its negative terminal.</param>
/// <param name="Waveform">The device's voltage over time, in volts.</param>
/// <param name="SmallSignal">The device's amplitude in small-signal analysis, in volts; 0 is a short there.</param>
public sealed record VoltageSource(
    string Name, string Plus, string Minus, SourceWaveform Waveform, double SmallSignal = 0) : Device(Name, Plus, Minus)
{
    /// <summary>A source of constant voltage.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Node of its positive terminal.</param>
    /// <param name="minus">Node of its negative terminal.</param>
    /// <param name="volts">Its voltage, V.</param>
    public VoltageSource(string name, string plus, string minus, double volts)
        : this(name, plus, minus, new ConstantWaveform(volts))
    {
    }
}
