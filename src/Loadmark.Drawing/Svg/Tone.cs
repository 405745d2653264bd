namespace Loadmark.Drawing.Svg;

/// <summary>The tones that inks are made of; a palette gives each its colour.</summary>
public enum Tone
{
    /// <summary>No colour.</summary>
    None,

    /// <summary>The sheet.</summary>
    Paper,

    /// <summary>The face of things on the sheet.</summary>
    Face,

    /// <summary>Thin lines that only order.</summary>
    Hair,

    /// <summary>Edges.</summary>
    Edge,

    /// <summary>Text and leads.</summary>
    Strong,

    /// <summary>Text that steps back.</summary>
    Quiet,

    /// <summary>The running draw.</summary>
    Run,

    /// <summary>A draw that was read or computed.</summary>
    Reading,

    /// <summary>Past the limit.</summary>
    Over,

    /// <summary>Severity harm.</summary>
    Harm,

    /// <summary>Severity fails.</summary>
    Fails,

    /// <summary>Severity unsure.</summary>
    Unsure,

    /// <summary>Severity noise.</summary>
    Noise,

    /// <summary>Severity margin.</summary>
    Margin,

    /// <summary>Severity note.</summary>
    Note,

    /// <summary>Severity good.</summary>
    Good,

    /// <summary>First line of a plot.</summary>
    Series0,

    /// <summary>Second line of a plot.</summary>
    Series1,

    /// <summary>Third line of a plot.</summary>
    Series2,

    /// <summary>Fourth line of a plot.</summary>
    Series3,

    /// <summary>Fifth line of a plot.</summary>
    Series4,

    /// <summary>Sixth line of a plot.</summary>
    Series5,
}
