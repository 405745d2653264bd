using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class HeaterElement(Heater heater, int index) : ThermalElement(heater, index)
{
    private int _cold;
    private int _hot;
    private int _seconds;

    protected override double RatedWatts => heater.RatedVolts * heater.RatedVolts / Parameters.Values[_hot];

    protected override double ThermalSeconds => Parameters.Values[_seconds];

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        _cold = layout.AddParameter(this, DeviceParameter.ColdOhms, heater.ColdOhms);
        _hot = layout.AddParameter(this, DeviceParameter.HotOhms, heater.HotOhms);
        _seconds = layout.AddParameter(this, DeviceParameter.ThermalSeconds, heater.ThermalSeconds);
    }

    protected override (double Ohms, double Rise) Resistance(double heat)
    {
        var (cold, rise) = (Parameters.Values[_cold], Parameters.Values[_hot] - Parameters.Values[_cold]);
        return heat > 0 ? (cold + (rise * heat), rise) : (cold, 0);
    }
}
