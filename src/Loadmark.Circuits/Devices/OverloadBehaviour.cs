namespace Loadmark.Circuits.Devices;

/// <summary>How an outlet meets more demand than its limit.</summary>
public enum OverloadBehaviour
{
    /// <summary>No limit: the source resistance alone bounds the current.</summary>
    None,

    /// <summary>The outlet holds the current at the limit and lets the voltage fall.</summary>
    ConstantCurrent,

    /// <summary>As the voltage falls, the current it gives falls too, in a straight line down to the short-circuit current.</summary>
    Foldback,

    /// <summary>The outlet holds the limit for the trip time, switches off for the off time, and tries again with its soft start.</summary>
    Hiccup,
}
