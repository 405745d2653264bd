using Loadmark.Circuits.Devices;
using static Loadmark.Circuits.Spice.SpiceDeck;

namespace Loadmark.Circuits.Spice;

/// <summary>
/// Writes the devices that SPICE has no element for as B-sources, with capacitors and switches where they remember something.
/// </summary>
internal sealed class SpiceLaws(SpiceDeck deck, bool isSteady)
{
    public void Write(Device device, string name, string plus, string minus)
    {
        var volts = Volts(plus, minus);
        switch (device)
        {
            case LoadDevice load:
                Write(load, name, plus, minus);
                break;
            case OutletDevice outlet:
                Write(outlet, name, plus, minus);
                break;
            case Heater heater:
                var rise = heater.HotOhms - heater.ColdOhms;
                WriteHeat(
                    name, plus, minus, heater.ThermalSeconds, heater.RatedVolts * heater.RatedVolts / heater.HotOhms,
                    $"{volts}/({Number(heater.ColdOhms)}+{Number(rise)}*max(0,v({name}_heat)))");
                break;
            case ResettableFuse fuse:
                WriteHeat(
                    name, plus, minus, fuse.ThermalSeconds, fuse.ThresholdAmps * fuse.ThresholdAmps * fuse.ColdOhms,
                    $"{volts}/({Number(fuse.ColdOhms)}*exp({Number(Math.Log(10))}*min(6,max(0,(v({name}_heat)-1)/{Number(fuse.Span)}))))");
                break;
            default:
                throw new ArgumentException($"SPICE has no {device.GetType().Name}.", nameof(device));
        }
    }

    private static string Volts(string plus, string minus) =>
        minus == "0" ? $"v({plus})" : plus == "0" ? $"(-v({minus}))" : $"v({plus},{minus})";

    private static string Law(LoadDevice load, double draw, string volts)
    {
        var floor = Number(load.FloorVolts);
        var share = $"({volts}/{floor})";
        return load.Law switch
        {
            LoadLaw.Resistance => $"{volts}/{Number(draw)}",
            LoadLaw.Current => $"{Number(draw)}*({volts}>={floor} ? 1 : ({volts}>0 ? {share}*(2-{share}) : 2*{share}))",
            _ => $"{Number(draw)}*({volts}>={floor} ? 1/max({volts},{floor}) : "
                + $"({volts}>0 ? {share}*(3-2*{share})/{floor} : 3*{share}/{floor}))",
        };
    }

    private void Write(LoadDevice load, string name, string plus, string minus)
    {
        var volts = Volts(plus, minus);
        var running = Law(load, load.Draw, volts);
        if (isSteady || (load.StartsAbove == 0 && load.BootDraw is null))
        {
            deck.Line($"B{name} {plus} {minus} i={running}");
            return;
        }

        // A switch with hysteresis remembers whether the load is on; a capacitor of 1 F counts how long it has been. The jumps
        // are rounded, over 1 µs and a thousandth of the boot time, because SPICE does not get past sharp ones.
        if (load.DelaySeconds > 0)
            deck.Line(FormattableString.Invariant($"* the delay of {load.DelaySeconds:R} s before each start is left out"));
        var (middle, half) = ((load.StartsAbove + load.StopsBelow) / 2, (load.StartsAbove - load.StopsBelow) / 2);
        deck.Line($"V{name}_one {name}_one 0 dc 1");
        deck.Line($"S{name} {name}_one {name}_latch {plus} {minus} {name}_switch");
        deck.Line($".model {name}_switch SW(vt={Number(middle)} vh={Number(half)} ron=1m roff=1e9)");
        deck.Line($"R{name}_latch {name}_latch 0 1000");
        deck.Line($"R{name}_on {name}_latch {name}_on 10k");
        deck.Line($"C{name}_on {name}_on 0 0.1n ic=0");
        var drawn = running;
        if (load.BootDraw is { } boot)
        {
            deck.Line($"C{name}_boot {name}_boot 0 1 ic=0");
            deck.Line($"R{name}_boot {name}_boot 0 1e12");
            deck.Line(
                $"B{name}_boot 0 {name}_boot "
                + $"i=v({name}_on)*{Number(1 / load.BootSeconds)}*min(1,max(0,10*(2-v({name}_boot))))-(1-v({name}_on))*1e3*v({name}_boot)");
            drawn = $"({Law(load, boot, volts)}+min(1,max(0,1000*(v({name}_boot)-1)))*({running}-{Law(load, boot, volts)}))";
        }

        deck.Line($"B{name} {plus} {minus} i=v({name}_on)*{drawn}+{Number(LoadElement.OffSiemens)}*{volts}");
    }

    private void Write(OutletDevice outlet, string name, string plus, string minus)
    {
        var volts = Volts(plus, minus);
        var emf = Number(outlet.Volts);
        if (!isSteady && outlet.SoftStartSeconds + outlet.DelaySeconds > 0)
        {
            deck.Line(
                $"V{name}_emf {name}_emf 0 pwl({Number(outlet.DelaySeconds)} 0 "
                + $"{Number(outlet.DelaySeconds + Math.Max(1e-9, outlet.SoftStartSeconds))} {emf})");
            emf = $"v({name}_emf)";
        }

        if (outlet.Overload == OverloadBehaviour.Hiccup)
            deck.Line("* hiccup is left out: the limit holds for ever");
        var free = $"({emf}-{volts})/{Number(outlet.SourceOhms)}";
        var knee = outlet.Volts - (outlet.SourceOhms * outlet.LimitAmps);
        var limited = outlet.Overload switch
        {
            OverloadBehaviour.None => free,
            OverloadBehaviour.Foldback when knee > 0 =>
                $"min({free},{Number(outlet.ShortAmps)}"
                + $"+{Number((outlet.LimitAmps - outlet.ShortAmps) / knee)}*min({Number(knee)},max(0,{volts})))",
            _ => $"min({free},{Number(outlet.LimitAmps)})",
        };
        deck.Line($"B{name} {minus} {plus} i=max(0,{limited})-{Number(OutletElement.OffSiemens)}*{volts}");
    }

    private void WriteHeat(string name, string plus, string minus, double seconds, double watts, string current)
    {
        deck.Line($"B{name} {plus} {minus} i={current}");
        deck.Line($"B{name}_heat 0 {name}_heat i={Volts(plus, minus)}*({current})/{Number(watts)}");
        deck.Line($"R{name}_heat {name}_heat 0 1");
        deck.Line($"C{name}_heat {name}_heat 0 {Number(seconds)} ic=0");
    }
}
