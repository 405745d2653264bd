namespace Loadmark.Core.Gear;

/// <summary>Where a figure came from. It goes with the figure wherever the figure goes.</summary>
public enum Origin
{
    /// <summary>Printed on the gear or typed by the user.</summary>
    Stated,

    /// <summary>Measured, or published by somebody who measured.</summary>
    Measured,

    /// <summary>Computed from other figures of the same thing, such as amps from watts.</summary>
    Derived,

    /// <summary>A convention of the trade or the figure of a class of device, standing in for one that is missing.</summary>
    Assumed,

    /// <summary>
    /// Nothing tells it, and no convention may stand in: whoever needs it has to look or to measure. The value that goes with it only
    /// lets a computation go on; nothing may be asserted of it.
    /// </summary>
    Unknown,
}
