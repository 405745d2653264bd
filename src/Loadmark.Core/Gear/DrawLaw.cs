namespace Loadmark.Core.Gear;

/// <summary>How a load's current follows its voltage.</summary>
public enum DrawLaw
{
    /// <summary>The same current at any voltage, as circuits with linear regulators and plain analog circuits do.</summary>
    Current,

    /// <summary>The same power at any voltage, as switching converters do: less voltage, more current.</summary>
    Power,

    /// <summary>A resistance, as heaters do.</summary>
    Resistance,
}
