using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class ResettableFuseElement(ResettableFuse fuse, int index) : ThermalElement(fuse, index)
{
    /// <summary>Decades at which the resistance stops rising.</summary>
    private const double MostDecades = 6;

    private int _cold;
    private int _threshold;
    private int _seconds;
    private bool _isTripped;

    public override DeviceState State => _isTripped ? DeviceState.Tripped : DeviceState.Closed;

    public override int IndicatorCount => 1;

    protected override double RatedWatts => Parameters.Values[_threshold] * Parameters.Values[_threshold] * Parameters.Values[_cold];

    protected override double ThermalSeconds => Parameters.Values[_seconds];

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        _cold = layout.AddParameter(this, DeviceParameter.ColdOhms, fuse.ColdOhms);
        _threshold = layout.AddParameter(this, DeviceParameter.ThresholdAmps, fuse.ThresholdAmps);
        _seconds = layout.AddParameter(this, DeviceParameter.ThermalSeconds, fuse.ThermalSeconds);
    }

    public override void Reset(AnalysisPoint point)
    {
        base.Reset(point);
        _isTripped = false;
    }

    public override void Accept(EquationSystem system, AnalysisPoint point)
    {
        base.Accept(system, point);
        if (point.IsSteady)
            _isTripped = Heat > 1;
    }

    public override void Indicate(Span<double> indicators, EquationSystem system, AnalysisPoint point) =>
        indicators[0] = HeatOf(system) - 1;

    public override bool Cross(int indicator, bool isPositive, AnalysisPoint point)
    {
        _isTripped = isPositive;
        return false;
    }

    protected override (double Ohms, double Rise) Resistance(double heat)
    {
        var cold = Parameters.Values[_cold];
        var decades = (heat - 1) / fuse.Span;
        if (decades <= 0)
            return (cold, 0);
        if (decades >= MostDecades)
            return (cold * Math.Pow(10, MostDecades), 0);
        var ohms = cold * Math.Pow(10, decades);
        return (ohms, ohms * Math.Log(10) / fuse.Span);
    }
}
