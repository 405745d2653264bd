namespace Loadmark.Core.Fits;

/// <summary>The answer to whether one thing suits another; greater is worse.</summary>
public enum Fit
{
    /// <summary>The one suits the other.</summary>
    Yes,

    /// <summary>Whether the one suits the other is not known: a figure that decides is missing.</summary>
    NotKnown,

    /// <summary>The one does not suit the other.</summary>
    No,
}
