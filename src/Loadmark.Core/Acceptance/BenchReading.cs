using Loadmark.Core.Readings;

namespace Loadmark.Core.Acceptance;

/// <summary>What a meter showed at one plug. Volts are above zero where the centre contact is positive.</summary>
public sealed record BenchReading
{
    /// <summary>The voltage with nothing plugged in; null where it was not measured.</summary>
    public DisplayedValue<Volt>? Open { get; init; }

    /// <summary>The voltage with all loads running; null where it was not measured.</summary>
    public DisplayedValue<Volt>? Loaded { get; init; }

    /// <summary>The current of the load; null where it was not measured.</summary>
    public DisplayedValue<Ampere>? Draw { get; init; }

    /// <summary>Whether nothing was measured.</summary>
    public bool IsEmpty => Open is null && Loaded is null && Draw is null;

    /// <summary>The reading with what another one has measured in its place.</summary>
    /// <param name="later">The other.</param>
    public BenchReading With(BenchReading later)
    {
        ArgumentNullException.ThrowIfNull(later);
        return new BenchReading { Open = later.Open ?? Open, Loaded = later.Loaded ?? Loaded, Draw = later.Draw ?? Draw };
    }
}
