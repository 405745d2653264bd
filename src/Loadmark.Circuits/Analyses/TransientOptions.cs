namespace Loadmark.Circuits.Analyses;

/// <summary>How a transient is computed.</summary>
/// <param name="EndSeconds">When it ends, over 0 s; it starts at 0 s.</param>
public sealed record TransientOptions(double EndSeconds)
{
    /// <summary>
    /// Whether it starts from the steady state at time 0, loads running; otherwise from capacitors at their initial voltage, cold, loads
    /// off.
    /// </summary>
    public bool StartsSteady { get; init; }

    /// <summary>Local error allowed in a step, as a share of each capacitor's voltage and heat state, over 0.</summary>
    public double RelativeError { get; init; } = 1e-4;

    /// <summary>Local error allowed in a step beside the relative one, V (and heat), over 0.</summary>
    public double AbsoluteError { get; init; } = 1e-5;

    /// <summary>The longest step, s, over 0; infinite for no limit but the end.</summary>
    public double LongestStep { get; init; } = double.PositiveInfinity;

    /// <summary>The shortest step, s, over 0; what still fails there is told.</summary>
    public double ShortestStep { get; init; } = 1e-12;

    /// <summary>How closely an event is located, s, over 0.</summary>
    public double EventSeconds { get; init; } = 1e-7;

    /// <summary>The most changes of state at one instant, 1 or more; more is told as chatter.</summary>
    public int ChangeLimit { get; init; } = 1000;

    /// <summary>
    /// From when on the run ends where what the network does repeats, s; infinite for never. Nothing repeats while a source goes by time.
    /// </summary>
    public double RepeatsAfter { get; init; } = double.PositiveInfinity;

    /// <summary>
    /// The most work of a run, in equations evaluated (see <see cref="Networks.Network.Work"/>), over 0; a run that takes more ends there.
    /// </summary>
    public long MostWork { get; init; } = long.MaxValue;
}
