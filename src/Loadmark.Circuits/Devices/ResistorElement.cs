using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

internal sealed class ResistorElement(Resistor resistor, int index) : Element(resistor, index)
{
    private ParameterTable _parameters = null!;
    private int _ohms;

    public override void Declare(NetworkLayout layout)
    {
        base.Declare(layout);
        _parameters = layout.Parameters;
        _ohms = layout.AddParameter(this, DeviceParameter.Ohms, resistor.Ohms);
    }

    public override void StampMatrix(EquationSystem system, AnalysisPoint point) =>
        system.AddConductance(Pair, 1 / _parameters.Values[_ohms]);

    public override double Current(EquationSystem system, AnalysisPoint point) =>
        system.VoltageOf(Pair) / _parameters.Values[_ohms];
}
