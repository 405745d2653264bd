namespace Loadmark.Core.Nameplates;

/// <summary>How reading one field of a nameplate went.</summary>
public enum FieldState
{
    /// <summary>The text says nothing of what the field asks.</summary>
    Absent,

    /// <summary>The text says what the field asks, and says one thing.</summary>
    Read,

    /// <summary>The text can be taken in more than one way; the candidates are kept.</summary>
    Ambiguous,

    /// <summary>The text speaks of what the field asks, but makes no sense.</summary>
    Unreadable,
}
