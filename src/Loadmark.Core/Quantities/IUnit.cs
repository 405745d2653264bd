namespace Loadmark.Core.Quantities;

/// <summary>A coherent SI unit, as a type: it keeps volts from being added to amperes at compile time.</summary>
public interface IUnit
{
    /// <summary>The unit's symbol as the SI Brochure prints it, such as <c>V</c>.</summary>
    static abstract string Symbol { get; }

    /// <summary>Whether small values read better with a prefix (0.3 A as 300 mA) than without (0.5 m).</summary>
    static abstract bool TakesPrefix { get; }

    /// <summary>
    /// The largest value that a pedalboard can be about, in this unit. Anything above is a slip of the pen
    /// (1000000 mA) and is refused where text is read; arithmetic does not check it.
    /// </summary>
    static abstract decimal Largest { get; }
}
