namespace Loadmark.Circuits.Devices;

/// <summary>A junction diode by Shockley's law, i = Is·(exp(v / (n·Vt)) − 1) + 1e-12 S·v, with Vt at 27 °C, as SPICE has it.</summary>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of the anode.</param>
/// <param name="Minus">Node of the cathode.</param>
/// <param name="SaturationAmps">Saturation current Is, over 0 A; SPICE's default is 1e-14 A.</param>
/// <param name="Emission">Emission coefficient n, over 0; SPICE's default is 1.</param>
/// <param name="SeriesOhms">Resistance in series, 0 Ω or more.</param>
public sealed record Diode(
    string Name, string Plus, string Minus, double SaturationAmps = 1e-14, double Emission = 1,
    double SeriesOhms = 0) : Device(Name, Plus, Minus);
