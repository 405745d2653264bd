namespace Loadmark.Core.Quantities;

/// <summary>
/// The products and quotients of electrical quantities: Ohm's law V = R·I and the power law P = V·I with their
/// inversions (OpenStax University Physics vol. 2, sections 9.4 and 9.5; checked in tests/Loadmark.Reference).
/// </summary>
public static class Electricity
{
    extension(Quantity<Volt>)
    {
        /// <summary>P = V·I.</summary>
        public static Quantity<Watt> operator *(Quantity<Volt> voltage, Quantity<Ampere> current) => new(voltage.Value * current.Value);

        /// <summary>I = V/R.</summary>
        /// <exception cref="DivideByZeroException">The resistance is zero.</exception>
        public static Quantity<Ampere> operator /(Quantity<Volt> voltage, Quantity<Ohm> resistance) =>
            new(voltage.Value / resistance.Value);

        /// <summary>R = V/I.</summary>
        /// <exception cref="DivideByZeroException">The current is zero.</exception>
        public static Quantity<Ohm> operator /(Quantity<Volt> voltage, Quantity<Ampere> current) => new(voltage.Value / current.Value);
    }

    extension(Quantity<Ampere>)
    {
        /// <summary>P = I·V.</summary>
        public static Quantity<Watt> operator *(Quantity<Ampere> current, Quantity<Volt> voltage) => new(current.Value * voltage.Value);

        /// <summary>V = I·R.</summary>
        public static Quantity<Volt> operator *(Quantity<Ampere> current, Quantity<Ohm> resistance) =>
            new(current.Value * resistance.Value);
    }

    extension(Quantity<VoltAmpere>)
    {
        /// <summary>I = S/V, both effective values; of alternating current too, whatever the power factor.</summary>
        /// <exception cref="DivideByZeroException">The voltage is zero.</exception>
        public static Quantity<Ampere> operator /(Quantity<VoltAmpere> power, Quantity<Volt> voltage) => new(power.Value / voltage.Value);
    }

    extension(Quantity<Watt>)
    {
        /// <summary>I = P/V.</summary>
        /// <exception cref="DivideByZeroException">The voltage is zero.</exception>
        public static Quantity<Ampere> operator /(Quantity<Watt> power, Quantity<Volt> voltage) => new(power.Value / voltage.Value);

        /// <summary>V = P/I.</summary>
        /// <exception cref="DivideByZeroException">The current is zero.</exception>
        public static Quantity<Volt> operator /(Quantity<Watt> power, Quantity<Ampere> current) => new(power.Value / current.Value);
    }
}
