namespace Loadmark.Circuits.Devices;

/// <summary>A thermal resettable fuse: a resistance that stays low until its heat state x reaches 1, then rises steeply.</summary>
/// <remarks>
/// τ·dx/dt = p / P − x with p the power in it and P = threshold²·cold; R = cold up to x = 1, then cold·10^((x − 1) / span), at
/// most cold·10^6. It trips after −τ·ln(1 − (threshold / i)²) at a constant current i, holds itself tripped with about the power
/// P, and closes again once it has cooled. See docs/theory/fuse.md.
/// </remarks>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of one end.</param>
/// <param name="Minus">Node of the other end.</param>
/// <param name="ColdOhms">Resistance when cold, over 0 Ω.</param>
/// <param name="ThresholdAmps">The largest current that it carries for ever, over 0 A.</param>
/// <param name="ThermalSeconds">Thermal time constant τ, over 0 s.</param>
/// <param name="Span">Rise of the heat state for a tenfold resistance, over 0.</param>
public sealed record ResettableFuse(
    string Name, string Plus, string Minus, double ColdOhms, double ThresholdAmps, double ThermalSeconds,
    double Span = 0.1) : Device(Name, Plus, Minus)
{
    /// <summary>A fuse from the figures that data sheets print.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Node of one end.</param>
    /// <param name="minus">Node of the other end.</param>
    /// <param name="coldOhms">Resistance when cold, Ω.</param>
    /// <param name="holdAmps">Hold current: it never trips up to this, A.</param>
    /// <param name="tripAmps">Trip current: it surely trips from this on, A, over the hold current.</param>
    /// <param name="testAmps">The current at which the time to trip is printed, A, over the trip current.</param>
    /// <param name="tripSeconds">The time to trip at that current, s.</param>
    /// <returns>A fuse whose threshold is the geometric mean of hold and trip current, and that trips in that time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The currents do not ascend, or a figure is not over 0.</exception>
    public static ResettableFuse FromDataSheet(
        string name, string plus, string minus, double coldOhms, double holdAmps, double tripAmps, double testAmps, double tripSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(holdAmps);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(tripAmps, holdAmps);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(testAmps, tripAmps);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tripSeconds);
        var threshold = Math.Sqrt(holdAmps * tripAmps);
        var thermal = -tripSeconds / Math.Log(1 - Math.Pow(threshold / testAmps, 2));
        return new ResettableFuse(name, plus, minus, coldOhms, threshold, thermal);
    }
}
