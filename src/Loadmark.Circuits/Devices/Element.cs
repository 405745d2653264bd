using Loadmark.Circuits.Analyses;
using Loadmark.Circuits.Networks;

namespace Loadmark.Circuits.Devices;

/// <summary>What a device does in an analysis. One instance belongs to one network.</summary>
internal abstract class Element(Device device, int index)
{
    public Device Device { get; } = device;

    /// <summary>The element's place among the devices of the netlist, from 0.</summary>
    public int Index { get; } = index;

    /// <summary>The element's two nodes in the equations.</summary>
    public PairSlots Pair { get; protected set; }

    /// <summary>What the element is doing now.</summary>
    public virtual DeviceState State => DeviceState.Plain;

    /// <summary>How many quantities the element watches for a change of sign.</summary>
    public virtual int IndicatorCount => 0;

    /// <summary>Reserves unknowns, states and parameters, and says which unknowns meet.</summary>
    public virtual void Declare(NetworkLayout layout) => layout.Meet(layout.Plus(this), layout.Minus(this));

    /// <summary>Looks up its slots once the order is known.</summary>
    public virtual void Bind(NetworkLayout layout) => Pair = layout.Pair(layout.Plus(this), layout.Minus(this));

    /// <summary>Adds the linear conductances that hold for a whole step.</summary>
    public virtual void StampMatrix(EquationSystem system, AnalysisPoint point)
    {
    }

    /// <summary>Adds the constant currents that hold for one solution in time.</summary>
    public virtual void StampConstant(EquationSystem system, AnalysisPoint point)
    {
    }

    /// <summary>Whether <see cref="StampNonlinear"/> does anything.</summary>
    public virtual bool IsNonlinear => false;

    /// <summary>Adds current and slope at the present voltages.</summary>
    public virtual void StampNonlinear(EquationSystem system, AnalysisPoint point)
    {
    }

    /// <summary>Adds what the element stores, for a small signal: the matrix holds its slopes already.</summary>
    public virtual void StampSmallSignal(SmallSignalSystem system, double angularFrequency)
    {
    }

    /// <summary>Writes the element's states and their slopes once the equations are solved.</summary>
    public virtual void Accept(EquationSystem system, AnalysisPoint point)
    {
    }

    /// <summary>The current from plus through the element to minus, A; for an outlet and a voltage source what it gives.</summary>
    public abstract double Current(EquationSystem system, AnalysisPoint point);

    /// <summary>Goes to the state before time 0, or for a steady state to the one in which everything runs.</summary>
    public virtual void Reset(AnalysisPoint point)
    {
    }

    /// <summary>The quantities the element watches; the equations are smooth as long as none changes its sign.</summary>
    public virtual void Indicate(Span<double> indicators, EquationSystem system, AnalysisPoint point)
    {
    }

    /// <summary>Whether an indicator over 0 always calls for a change of state, or only a change of its sign does.</summary>
    public virtual bool IsSwitch(int indicator) => false;

    /// <summary>An indicator has changed its sign. Returns true where the equations jump.</summary>
    public virtual bool Cross(int indicator, bool isPositive, AnalysisPoint point) => false;

    /// <summary>The next time after the present at which it changes of itself; infinite where there is none.</summary>
    public virtual double NextTime(double seconds) => double.PositiveInfinity;

    /// <summary>Does what is due at the present time. Returns true where the equations jump.</summary>
    public virtual bool Elapse(AnalysisPoint point) => false;

    /// <summary>How many times run in the element: what it will do of itself hangs on them.</summary>
    public virtual int ClockCount => 0;

    /// <summary>Whether what the element does goes by the time since the start, and not by its states alone.</summary>
    public virtual bool GoesByTime => false;

    /// <summary>How much is left of each time that runs, s; infinite for one that does not run.</summary>
    public virtual void ReadClocks(Span<double> clocks, double seconds)
    {
    }

    /// <summary>The longest step the element can stand, s.</summary>
    public virtual double LongestStep => double.PositiveInfinity;
}
