namespace Loadmark.Simulation.Starting;

/// <summary>What was seen of a load while a rig started.</summary>
internal struct LoadMeter
{
    /// <summary>Nothing seen yet.</summary>
    public static LoadMeter Fresh =>
        new() { Volts = double.NaN, LastStart = double.NaN, LastDrop = double.NaN, LowestVolts = double.PositiveInfinity };

    /// <summary>Whether the load draws.</summary>
    public bool IsOn;

    /// <summary>How often the load started.</summary>
    public int Starts;

    /// <summary>When the load started last, s; NaN where it never did.</summary>
    public double LastStart;

    /// <summary>When the load dropped out last, s; NaN where it never did.</summary>
    public double LastDrop;

    /// <summary>The lowest voltage while it was on, V; infinite where it never was.</summary>
    public double LowestVolts;

    /// <summary>The load's voltage now, V.</summary>
    public double Volts;
}
