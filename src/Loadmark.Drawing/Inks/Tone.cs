namespace Loadmark.Drawing.Inks;

/// <summary>The tones that inks are made of; a palette gives each its colour.</summary>
public enum Tone
{
    /// <summary>No colour at all.</summary>
    None,

    /// <summary>The colour of the sheet.</summary>
    Paper,

    /// <summary>The face of things on the sheet.</summary>
    Face,

    /// <summary>Thin lines that only order.</summary>
    Hair,

    /// <summary>The colour of edges.</summary>
    Edge,

    /// <summary>Text and leads.</summary>
    Strong,

    /// <summary>The colour of text that steps back.</summary>
    Quiet,

    /// <summary>The running draw.</summary>
    Run,

    /// <summary>A draw that was read or computed.</summary>
    Reading,

    /// <summary>Past the limit.</summary>
    Over,

    /// <summary>The colour of severity harm.</summary>
    Harm,

    /// <summary>The colour of severity fails.</summary>
    Fails,

    /// <summary>The colour of severity unsure.</summary>
    Unsure,

    /// <summary>The colour of severity noise.</summary>
    Noise,

    /// <summary>The colour of severity margin.</summary>
    Margin,

    /// <summary>The colour of severity note.</summary>
    Note,

    /// <summary>The colour of severity good.</summary>
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
