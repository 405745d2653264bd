namespace Loadmark.Circuits.Networks;

/// <summary>A figure of a device that may be changed without compiling again.</summary>
public enum DeviceParameter
{
    /// <summary>Resistance of a resistor, Ω.</summary>
    Ohms,

    /// <summary>Capacitance of a capacitor, F.</summary>
    Farads,

    /// <summary>Series resistance of a capacitor, Ω.</summary>
    SeriesOhms,

    /// <summary>EMF of an outlet, V.</summary>
    Volts,

    /// <summary>Source resistance of an outlet, Ω.</summary>
    SourceOhms,

    /// <summary>Limit of an outlet, A.</summary>
    LimitAmps,

    /// <summary>Multiplier of the waveform of a voltage or current source; 1 as compiled.</summary>
    Scale,

    /// <summary>Draw of a load, in the unit of its law.</summary>
    Draw,

    /// <summary>Draw of a load after each start, in the unit of its law.</summary>
    BootDraw,

    /// <summary>How long a load draws its starting draw, s.</summary>
    BootSeconds,

    /// <summary>Voltage at which a load starts, V.</summary>
    StartsAbove,

    /// <summary>Voltage below which a load drops out, V.</summary>
    StopsBelow,

    /// <summary>Cold resistance of a heater or a resettable fuse, Ω.</summary>
    ColdOhms,

    /// <summary>Hot resistance of a heater, Ω.</summary>
    HotOhms,

    /// <summary>Threshold of a resettable fuse, A.</summary>
    ThresholdAmps,

    /// <summary>Thermal time constant of a heater or a resettable fuse, s.</summary>
    ThermalSeconds,
}
