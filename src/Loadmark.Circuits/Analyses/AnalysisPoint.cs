namespace Loadmark.Circuits.Analyses;

/// <summary>The point that is being solved: time, step and states. One per network, reused.</summary>
internal sealed class AnalysisPoint(int stateCount)
{
    /// <summary>Time, s; 0 in a steady state.</summary>
    public double Time { get; set; }

    /// <summary>Weight of a state's slope in the equation that is solved, s: y = known + weight·dy/dt. 0 in a steady state.</summary>
    public double Weight { get; set; }

    /// <summary>Whether a steady state is sought: capacitors are open, heat has settled, loads draw their running draw.</summary>
    public bool IsSteady { get; set; } = true;

    /// <summary>Share of every source in force, 0 to 1; below 1 only while sources are stepped up.</summary>
    public double SourceShare { get; set; } = 1;

    /// <summary>What is known of each state at the point that is solved.</summary>
    public double[] Known { get; } = new double[stateCount];

    /// <summary>The states: capacitor voltages, V, and heat states.</summary>
    public double[] States { get; } = new double[stateCount];

    /// <summary>The slopes of the states, per second.</summary>
    public double[] Slopes { get; } = new double[stateCount];
}
