namespace Loadmark.Core.Checks;

/// <summary>How bad a finding is; greater is worse. A rig's verdict is its worst finding.</summary>
public enum Severity
{
    /// <summary>Nothing to say.</summary>
    Good,

    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Works, with little to spare, or only if an assumption holds.</summary>
    Margin,

    /// <summary>May hum or whine.</summary>
    Noise,

    /// <summary>Will not run, or not for long.</summary>
    Fails,

    /// <summary>Can damage gear or hurt someone.</summary>
    Harm,
}
