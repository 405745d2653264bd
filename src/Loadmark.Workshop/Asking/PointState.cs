namespace Loadmark.Workshop.Asking;

/// <summary>How one aspect stands.</summary>
public enum PointState
{
    /// <summary>It fits, and that is known.</summary>
    Good,

    /// <summary>It is not known, or taken for granted, or fits with little to spare.</summary>
    Unsure,

    /// <summary>It does not fit.</summary>
    Bad,
}
