namespace Loadmark.Drawing.Diagrams;

/// <summary>How a rig is to be drawn.</summary>
public sealed record DiagramOptions
{
    /// <summary>The least width a picture is made for; below, it is this wide all the same.</summary>
    public const double LeastWidth = 300;

    /// <summary>Below this width supplies, outlets and loads stand under one another rather than side by side.</summary>
    public const double NarrowBelow = 560;

    /// <summary>The width there is, in px.</summary>
    public double Width { get; init; } = 1100;

    /// <summary>What was read or computed; null shows the figures the rig gives alone.</summary>
    public DiagramValues? Readings { get; init; }

    /// <summary>
    /// Whether everything is told in full, as on paper, which nobody can point at: long texts are wrapped and their rows are higher. Else
    /// rows are alike, what has no room is shortened or left out, and stands in the titles of the parts.
    /// </summary>
    public bool TellsAll { get; init; }

    /// <summary>Whether the key to the signs stands below.</summary>
    public bool ShowsKey { get; init; } = true;

    /// <summary>Whether the rig's name stands above.</summary>
    public bool ShowsHeading { get; init; }
}
