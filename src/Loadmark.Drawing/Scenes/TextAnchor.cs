namespace Loadmark.Drawing.Scenes;

/// <summary>Which part of a text stands at its x.</summary>
public enum TextAnchor
{
    /// <summary>Its left end.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its right end.</summary>
    End,
}
