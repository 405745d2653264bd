namespace Loadmark.Core.Gear;

/// <summary>
/// The draw of a class of load where the label does not give one. Common practice, no source: what bench meters show
/// over the years, not a standard. A figure from here is always an assumption and carries its range.
/// </summary>
/// <param name="Low">The low end of what such loads draw.</param>
/// <param name="High">The high end; null where the class has none ("300 mA and more").</param>
public sealed record ClassDraw(Amps Low, Amps? High)
{
    /// <summary>
    /// The voltage that stands in where none is printed: most pedals take 9 V d.c. (common practice, no source).
    /// </summary>
    public static Volts CommonVoltage { get; } = new(9);

    /// <summary>
    /// The figure that stands in: the high end, which is the safe side for a supply; the low end where there is no high.
    /// </summary>
    public Amps StandIn => High ?? Low;

    /// <summary>The figures of a class; null for <see cref="LoadClass.Unknown"/>, whose draw stays unknown.</summary>
    public static ClassDraw? Of(LoadClass loadClass) => loadClass switch
    {
        LoadClass.AnalogDrive => Milliamps(4, 20),
        LoadClass.AnalogModulation => Milliamps(20, 50),
        LoadClass.ComplexAnalog => Milliamps(20, 100),
        LoadClass.Digital => Milliamps(100, 300),
        LoadClass.LargeDigital => Milliamps(300, null),
        LoadClass.Valve => Milliamps(500, 500),
        _ => null,
    };

    /// <summary>The range in words: "4 mA to 20 mA", "300 mA and more", "about 500 mA for each valve's heater".</summary>
    public override string ToString() => High switch
    {
        null => $"{Low} and more",
        { } high when high == Low => $"about {Low} for each valve's heater",
        { } high => $"{Low} to {high}",
    };

    private static ClassDraw Milliamps(int low, int? high) =>
        new(new Amps(low / 1000m), high is { } top ? new Amps(top / 1000m) : null);
}
