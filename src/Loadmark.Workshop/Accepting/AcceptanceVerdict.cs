namespace Loadmark.Workshop.Accepting;

/// <summary>Whether a rig was built as drawn.</summary>
public enum AcceptanceVerdict
{
    /// <summary>Every plug was measured open and loaded, each reading passed, and nothing stands against the drawing itself.</summary>
    Accepted,

    /// <summary>Something is missing, or a reading does not tell.</summary>
    Open,

    /// <summary>A reading failed.</summary>
    Refused,
}
