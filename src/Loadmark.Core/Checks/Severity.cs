namespace Loadmark.Core.Checks;

/// <summary>How bad a finding is; greater is worse. A rig's verdict is its worst finding, or <see cref="Open"/>.</summary>
public enum Severity
{
    /// <summary>Nothing to say.</summary>
    Good,

    /// <summary>Worth knowing, or a convention of the trade that was taken for granted.</summary>
    Note,

    /// <summary>Works, with little to spare, or something that is not known could keep it from running.</summary>
    Margin,

    /// <summary>May hum or whine.</summary>
    Noise,

    /// <summary>Find out first: what is not known could mean harm.</summary>
    Unsure,

    /// <summary>Nothing is plugged in yet. Of a verdict only; no finding has it.</summary>
    Open,

    /// <summary>Will not run, or not for long.</summary>
    Fails,

    /// <summary>Can damage gear or hurt someone.</summary>
    Harm,
}
