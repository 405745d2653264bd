namespace Loadmark.Web.Metering;

/// <summary>What a meter measures.</summary>
public enum MeterQuantity
{
    /// <summary>A d.c. voltage, in volts.</summary>
    Volts,

    /// <summary>A direct current, in amperes.</summary>
    Amps,
}
