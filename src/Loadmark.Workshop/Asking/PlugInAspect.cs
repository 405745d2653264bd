namespace Loadmark.Workshop.Asking;

/// <summary>What has to fit before something may be plugged in.</summary>
public enum PlugInAspect
{
    /// <summary>The voltage.</summary>
    Volts,

    /// <summary>Direct or alternating current.</summary>
    Form,

    /// <summary>Which contact of the plug is positive.</summary>
    Polarity,

    /// <summary>The current while running.</summary>
    Amps,

    /// <summary>The current and the voltage while starting.</summary>
    Start,

    /// <summary>The plug and its size.</summary>
    Plug,

    /// <summary>What loads on one return do to one another.</summary>
    Sharing,
}
