namespace Loadmark.Circuits.Devices;

/// <summary>A load that draws by a law while it is on, drops out at low voltage, and starts again when the voltage is back.</summary>
/// <remarks>
/// Below <see cref="FloorVolts"/> (F) the law goes on smoothly to zero, with x = v / F: constant current I·(2x − x²), constant
/// power (P / F)·(3x − 2x²); below 0 V both are straight lines, 2·I·x and 3·(P / F)·x. Value and slope are continuous, and any
/// SPICE can write it. While it is off a load draws 1 nS·v. See docs/theory/loads.md.
/// </remarks>
/// <param name="Name">The device's name, unique in the netlist.</param>
/// <param name="Plus">Node of its positive terminal.</param>
/// <param name="Minus">Node of its negative terminal.</param>
/// <param name="Law">How it draws.</param>
/// <param name="Draw">What it draws when it runs, in the unit of the law: A, W (0 or more), or Ω (over 0).</param>
public sealed record LoadDevice(string Name, string Plus, string Minus, LoadLaw Law, double Draw) : Device(Name, Plus, Minus)
{
    /// <summary>
    /// Voltage at or above which it starts, see <see cref="DelaySeconds"/>, V; 0 with <see cref="StopsBelow"/> 0: it is always on.
    /// </summary>
    public double StartsAbove { get; init; }

    /// <summary>Voltage below which it drops out, V, from 0 to <see cref="StartsAbove"/>; 0: it never drops out.</summary>
    public double StopsBelow { get; init; }

    /// <summary>
    /// How long its voltage must have been at or above <see cref="StartsAbove"/> without a break before it starts, s, 0 or more.
    /// </summary>
    public double DelaySeconds { get; init; }

    /// <summary>Draw after each start, in the unit of the law; null: the same as <see cref="Draw"/>.</summary>
    public double? BootDraw { get; init; }

    /// <summary>How long the load draws <see cref="BootDraw"/> after each start, s, 0 or more.</summary>
    public double BootSeconds { get; init; }

    /// <summary>Voltage below which the law of constant current or power is bent to zero, over 0 V.</summary>
    public double FloorVolts { get; init; } = 0.5;
}
