namespace Loadmark.Drawing.Scenes;

/// <summary>Which part of a text stands at its x.</summary>
public enum TextAnchor
{
    /// <summary>The text begins at its place.</summary>
    Start,

    /// <summary>The middle of the text is at its place.</summary>
    Middle,

    /// <summary>The text ends at its place.</summary>
    End,
}
