namespace Loadmark.Core.Rigs;

/// <summary>What an outlet does when it is asked for more than its limit.</summary>
public enum OverloadWay
{
    /// <summary>Holds the current at the limit and lets the voltage fall.</summary>
    CurrentLimit,

    /// <summary>Lets the current fall too, the further the voltage falls.</summary>
    Foldback,

    /// <summary>Switches off and tries again after a pause, over and over.</summary>
    Hiccup,

    /// <summary>Opens a fuse, resettable or not.</summary>
    Fuse,
}
