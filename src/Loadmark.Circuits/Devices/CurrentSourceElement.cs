using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class CurrentSourceElement(CurrentSource source, int index) : Element(source, index)
{
    private ParameterTable _parameters = null!;
    private int _scale;

    public override double LongestStep => source.Waveform.LongestStep;

    public override bool GoesByTime => source.Waveform is not ConstantWaveform;

    public override void Declare(NetworkLayout layout)
    {
        _parameters = layout.Parameters;
        _scale = layout.AddParameter(this, DeviceParameter.Scale, 1, mayBeZero: true);
    }

    public override void Bind(NetworkLayout layout) =>
        Pair = new PairSlots(layout.Place(layout.Plus(this)), layout.Place(layout.Minus(this)), -1, -1, -1, -1);

    public override void StampConstant(EquationSystem system, AnalysisPoint point) =>
        system.AddConstant(Pair, point.SourceShare * Amps(point));

    public override void StampSmallSignal(SmallSignalSystem system, double angularFrequency)
    {
        system.AddSource(Pair.Plus, -source.SmallSignal);
        system.AddSource(Pair.Minus, source.SmallSignal);
    }

    public override double NextTime(double seconds) => source.Waveform.NextCorner(seconds);

    public override bool Elapse(AnalysisPoint point) => true;

    public override double Current(EquationSystem system, AnalysisPoint point) => Amps(point);

    private double Amps(AnalysisPoint point) => _parameters.Values[_scale] * source.Waveform.At(point.Time);
}
