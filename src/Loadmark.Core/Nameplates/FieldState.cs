namespace Loadmark.Core.Nameplates;

/// <summary>How reading one field of a nameplate went.</summary>
public enum FieldState
{
    /// <summary>The text says nothing of it.</summary>
    Absent,

    /// <summary>The text says it, and says one thing.</summary>
    Read,

    /// <summary>The text can be taken in more than one way; the candidates are kept.</summary>
    Ambiguous,

    /// <summary>The text speaks of it but what it says makes no sense.</summary>
    Unreadable,
}
