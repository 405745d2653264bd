namespace Loadmark.Core.Gear;

/// <summary>The classes of load that have something in common electrically.</summary>
public enum LoadClass
{
    /// <summary>The kind is not given, or the program knows no class for it.</summary>
    Unknown,

    /// <summary>Analog drive, distortion, fuzz, boost or compressor.</summary>
    AnalogDrive,

    /// <summary>Analog modulation or delay.</summary>
    AnalogModulation,

    /// <summary>Analog modulation or delay of the complex sort.</summary>
    ComplexAnalog,

    /// <summary>Digital: a processor inside.</summary>
    Digital,

    /// <summary>Large digital: several effects, screens, switches.</summary>
    LargeDigital,

    /// <summary>With a valve whose heater the supply feeds.</summary>
    Valve,
}
