namespace Loadmark.Core.Nameplates.Reading;

/// <summary>What an item of a label is.</summary>
internal enum ItemKind : byte
{
    /// <summary>One or more voltages, or a range.</summary>
    Volts,

    /// <summary>One or more currents, or a range.</summary>
    Amps,

    /// <summary>A power.</summary>
    Watts,

    /// <summary>A frequency, or a range.</summary>
    Hertz,

    /// <summary>A sign or word for direct current.</summary>
    Direct,

    /// <summary>A sign or word for alternating current.</summary>
    Alternating,

    /// <summary>What follows goes in.</summary>
    Input,

    /// <summary>What follows comes out.</summary>
    Output,

    /// <summary>A semicolon: the figures after it belong to another setting.</summary>
    Break,
}
