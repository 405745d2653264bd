namespace Loadmark.Core.Quantities;

/// <summary>
/// A unit as a value instead of a type, for what learns from a table which unit a quantity is in. Its quantities are objects.
/// </summary>
/// <remarks>
/// Code for a type parameter that is a value type of another project cannot be compiled ahead of time. The code behind this class stands
/// beside the units, where it can be: reading a rig's figures through it spares a command some 100 methods to compile at its start.
/// </remarks>
public abstract class Unit
{
    private protected Unit()
    {
    }

    /// <summary>The volt, of potential difference.</summary>
    public static Unit Volt { get; } = new TypedUnit<Volt>();

    /// <summary>The ampere, of current.</summary>
    public static Unit Ampere { get; } = new TypedUnit<Ampere>();

    /// <summary>The watt, of power.</summary>
    public static Unit Watt { get; } = new TypedUnit<Watt>();

    /// <summary>The ohm, of resistance.</summary>
    public static Unit Ohm { get; } = new TypedUnit<Ohm>();

    /// <summary>The second, of time.</summary>
    public static Unit Second { get; } = new TypedUnit<Second>();

    /// <summary>The metre, of length.</summary>
    public static Unit Metre { get; } = new TypedUnit<Metre>();

    /// <summary>The square metre, of the area of a conductor.</summary>
    public static Unit SquareMetre { get; } = new TypedUnit<SquareMetre>();

    /// <summary>The farad, of capacitance.</summary>
    public static Unit Farad { get; } = new TypedUnit<Farad>();

    /// <summary>The hertz, of frequency.</summary>
    public static Unit Hertz { get; } = new TypedUnit<Hertz>();

    /// <summary>The unit's symbol as the SI Brochure prints it, such as <c>V</c>.</summary>
    public abstract string Symbol { get; }

    /// <summary>Reads the whole text as one quantity of this unit, zero or more.</summary>
    /// <param name="text">A number with decimal point or comma, the unit with an SI prefix, with or without a space.</param>
    /// <param name="problem">Null when read; otherwise why not, as the end of a sentence: "a number is missing".</param>
    /// <returns>The <see cref="Quantity{TUnit}"/>; null when the text is none.</returns>
    public abstract object? Read(string text, out string? problem);

    /// <summary>The number of a quantity, in this unit.</summary>
    /// <param name="quantity">A <see cref="Quantity{TUnit}"/> of this unit.</param>
    /// <exception cref="InvalidCastException">The quantity is of another unit.</exception>
    public abstract decimal ValueOf(object quantity);

    /// <summary>The quantity in full, unrounded, as <see cref="Quantity{TUnit}.ToExactString"/> gives it.</summary>
    /// <param name="quantity">A <see cref="Quantity{TUnit}"/> of this unit.</param>
    /// <exception cref="InvalidCastException">The quantity is of another unit.</exception>
    public abstract string ExactText(object quantity);
}
