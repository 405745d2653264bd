namespace Loadmark.Drawing.Scenes;

/// <summary>What a text is for, which decides its size.</summary>
public enum TextRole
{
    /// <summary>Reads first: 14 px.</summary>
    Heading,

    /// <summary>Tags and names: 12 px.</summary>
    Body,

    /// <summary>Figures, labels and words beside them: 11 px.</summary>
    Small,
}
