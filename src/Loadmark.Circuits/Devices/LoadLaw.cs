namespace Loadmark.Circuits.Devices;

/// <summary>How a load draws while it is on.</summary>
public enum LoadLaw
{
    /// <summary>The same current at any voltage; the draw is in amperes.</summary>
    Current,

    /// <summary>The same power at any voltage; the draw is in watts.</summary>
    Power,

    /// <summary>A resistance; the draw is in ohms.</summary>
    Resistance,
}
