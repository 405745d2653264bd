namespace Loadmark.Simulation.Figures;

/// <summary>Turns the engine's plain numbers into quantities at the edge, rounded to a billionth of the unit.</summary>
internal static class SiConversion
{
    private const int Decimals = 9;
    private const double Largest = 1e15;

    /// <summary>A number in SI units as a quantity; null where it is not a number or beyond anything real.</summary>
    public static Quantity<TUnit>? Of<TUnit>(double value)
        where TUnit : struct, IUnit =>
        double.IsNaN(value) || Math.Abs(value) > Largest
            ? null
            : new Quantity<TUnit>(Math.Round((decimal)value, Decimals) / 1.0000000000000000000000000000m);

    /// <summary>A number of volts as a voltage; null where it is not a number or beyond anything real.</summary>
    public static Volts? Volts(double value) => Of<Volt>(value);

    /// <summary>A number of amperes as a current; null where it is not a number or beyond anything real.</summary>
    public static Amps? Amps(double value) => Of<Ampere>(value);

    /// <summary>A number of seconds as a time; 0 where it is not a number or beyond anything real.</summary>
    public static Seconds Seconds(double value) => Of<Second>(value) ?? default;
}
