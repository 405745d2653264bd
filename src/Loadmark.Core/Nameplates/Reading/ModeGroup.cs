namespace Loadmark.Core.Nameplates.Reading;

/// <summary>The figures that belong together: one or more voltages with the current, power and frequency said of them.</summary>
internal sealed class ModeGroup
{
    /// <summary>The voltages; null when only current or power is printed.</summary>
    public Item? Volts { get; init; }

    /// <summary>The current; null so far.</summary>
    public Item? Amps { get; set; }

    /// <summary>A second current that "max" or "typ" sets apart from the first; null when there is none.</summary>
    public Item? OtherAmps { get; set; }

    /// <summary>The power; null so far.</summary>
    public Item? Watts { get; set; }

    /// <summary>The frequency; null so far.</summary>
    public Item? Hertz { get; set; }

    /// <summary>Whether the voltage is the mains'.</summary>
    public bool IsMains { get; init; }

    /// <summary>How many settings it makes: one, or one for each alternative voltage.</summary>
    public int Count => Volts is { IsRange: false } volts ? volts.Values.Length : 1;
}
