namespace Loadmark.Core.Fits;

/// <summary>The answer to whether one thing suits another; greater is worse.</summary>
public enum Fit
{
    /// <summary>It suits.</summary>
    Yes,

    /// <summary>It is not known whether it suits: a figure that decides is missing.</summary>
    NotKnown,

    /// <summary>It does not suit.</summary>
    No,
}
