using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class VoltageSourceElement(VoltageSource source, int index) : Element(source, index)
{
    private ParameterTable _parameters = null!;
    private int _scale;
    private int _branch;
    private int _row;
    private int _plusBranch;
    private int _minusBranch;
    private int _branchPlus;
    private int _branchMinus;

    public override double LongestStep => source.Waveform.LongestStep;

    public override bool GoesByTime => source.Waveform is not ConstantWaveform;

    public override void Declare(NetworkLayout layout)
    {
        _parameters = layout.Parameters;
        _scale = layout.AddParameter(this, DeviceParameter.Scale, 1, mayBeZero: true);
        var (plus, minus) = (layout.Plus(this), layout.Minus(this));
        _branch = layout.AddUnknown(this, plus, minus);
        layout.Meet(plus, _branch);
        layout.Meet(minus, _branch);
    }

    public override void Bind(NetworkLayout layout)
    {
        var (plus, minus) = (layout.Plus(this), layout.Minus(this));
        Pair = new PairSlots(layout.Place(plus), layout.Place(minus), -1, -1, -1, -1);
        _row = layout.Place(_branch);
        _plusBranch = layout.Value(plus, _branch);
        _minusBranch = layout.Value(minus, _branch);
        _branchPlus = layout.Value(_branch, plus);
        _branchMinus = layout.Value(_branch, minus);
    }

    public override void StampMatrix(EquationSystem system, AnalysisPoint point)
    {
        system.AddValue(_plusBranch, 1);
        system.AddValue(_minusBranch, -1);
        system.AddValue(_branchPlus, 1);
        system.AddValue(_branchMinus, -1);
    }

    public override void StampConstant(EquationSystem system, AnalysisPoint point) =>
        system.AddConstant(_row, -point.SourceShare * _parameters.Values[_scale] * source.Waveform.At(point.Time));

    public override void StampSmallSignal(SmallSignalSystem system, double angularFrequency) =>
        system.AddSource(_row, source.SmallSignal);

    public override double NextTime(double seconds) => source.Waveform.NextCorner(seconds);

    public override bool Elapse(AnalysisPoint point) => true;

    public override double Current(EquationSystem system, AnalysisPoint point) => -system.Unknowns[_row];
}
