using System.Collections.Immutable;
using System.Text;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Spice;

/// <summary>
/// A netlist as the element lines of a SPICE deck: plain elements where SPICE has them, B-sources for the laws it has no element
/// for, and comments. Title, analysis and end are the caller's. The dialect is that of ngspice.
/// </summary>
/// <remarks>
/// Left out, and said in a comment: the delay before each start of a load, and the switching off of hiccup, which
/// becomes a constant-current limit.
/// </remarks>
public sealed class SpiceDeck
{
    private readonly SpiceNames _nodes = new();
    private readonly SpiceNames _devices = new();
    private readonly StringBuilder _text = new();

    /// <summary>Writes a netlist.</summary>
    /// <param name="netlist">What to write; it should be sound.</param>
    /// <param name="isSteady">Whether the deck is for an operating point, with every load on at its running draw; else for a transient from
    /// rest.</param>
    /// <param name="comment">The comment above a device, without line breaks; null for none.</param>
    public SpiceDeck(Netlist netlist, bool isSteady, Func<Device, string?>? comment = null)
    {
        ArgumentNullException.ThrowIfNull(netlist);
        _nodes.Reserve(Netlist.Ground);
        var laws = new SpiceLaws(this, isSteady);
        foreach (var device in netlist.Devices)
        {
            if (comment?.Invoke(device) is { } words)
                Line($"* {words}");
            Write(device, laws);
        }
    }

    /// <summary>The lines, each ended by a line feed.</summary>
    public string Text => _text.ToString();

    /// <summary>The name of a node in the deck.</summary>
    /// <param name="name">Its name in the netlist.</param>
    public string Node(string name) => _nodes.Of(name);

    /// <summary>The name of a device in the deck, without the letter of its kind.</summary>
    /// <param name="name">Its name in the netlist.</param>
    public string Device(string name) => _devices.Of(name);

    internal static string Number(double value) => value.ToString("R");

    internal void Line(string line) => _text.Append(line).Append('\n');

    private void Write(Device device, SpiceLaws laws)
    {
        var (name, plus, minus) = (Device(device.Name), Node(device.Plus), Node(device.Minus));
        switch (device)
        {
            case Resistor resistor:
                Line($"R{name} {plus} {minus} {Number(resistor.Ohms)}");
                break;
            case Capacitor { SeriesOhms: > 0 } capacitor:
                Line($"R{name}_esr {plus} {name}_esr {Number(capacitor.SeriesOhms)}");
                Line($"C{name} {name}_esr {minus} {Number(capacitor.Farads)} ic={Number(capacitor.InitialVolts)}");
                break;
            case Capacitor capacitor:
                Line($"C{name} {plus} {minus} {Number(capacitor.Farads)} ic={Number(capacitor.InitialVolts)}");
                break;
            case Diode diode:
                Line($"D{name} {plus} {minus} {name}_model");
                Line($".model {name}_model D(is={Number(diode.SaturationAmps)} n={Number(diode.Emission)} rs={Number(diode.SeriesOhms)})");
                break;
            case VoltageSource source:
                Line($"V{name} {plus} {minus} {Shape(source.Waveform)}{Amplitude(source.SmallSignal)}");
                break;
            case CurrentSource source:
                Line($"I{name} {plus} {minus} {Shape(source.Waveform)}{Amplitude(source.SmallSignal)}");
                break;
            default:
                laws.Write(device, name, plus, minus);
                break;
        }
    }

    private static string Amplitude(double amplitude) => amplitude == 0 ? "" : $" ac {Number(amplitude)}";

    private static string Shape(SourceWaveform waveform) => waveform switch
    {
        ConstantWaveform constant => $"dc {Number(constant.Value)}",
        StepWaveform step => Points([(step.Seconds, step.Before), (step.Seconds + 1e-9, step.After)]),
        PiecewiseLinearWaveform pieces => Points(pieces.Points),
        PulseWaveform pulse =>
            $"pulse({Number(pulse.Low)} {Number(pulse.High)} {Number(pulse.DelaySeconds)} {Number(Math.Max(1e-9, pulse.RiseSeconds))} "
            + $"{Number(Math.Max(1e-9, pulse.FallSeconds))} {Number(pulse.WidthSeconds)} "
            + $"{Number(double.IsInfinity(pulse.PeriodSeconds) ? 1e9 : pulse.PeriodSeconds)})",
        SineWaveform sine => $"sin({Number(sine.Offset)} {Number(sine.Amplitude)} {Number(sine.Hertz)} {Number(sine.DelaySeconds)})",
        _ => throw new ArgumentException($"SPICE has no {waveform.GetType().Name}.", nameof(waveform)),
    };

    private static string Points(ImmutableArray<(double Seconds, double Value)> points) =>
        $"pwl({string.Join(' ', points.Select(point => $"{Number(point.Seconds)} {Number(point.Value)}"))})";
}
