namespace Loadmark.Workshop.Asking;

/// <summary>A point with what follows from it for the answer.</summary>
/// <param name="Aspect">Which aspect.</param>
/// <param name="State">How it stands.</param>
/// <param name="Working">Why, in a sentence.</param>
internal sealed record JudgedPoint(PlugInAspect Aspect, PointState State, string Working)
{
    /// <summary>What has to hold, the end of "yes, if …"; null where nothing has to.</summary>
    public string? If { get; init; }

    /// <summary>What has to be found out first since it could mean harm, as a question; null where nothing has to.</summary>
    public string? Ask { get; init; }
}
