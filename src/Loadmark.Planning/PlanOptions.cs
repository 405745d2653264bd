namespace Loadmark.Planning;

/// <summary>How to plan.</summary>
public sealed record PlanOptions
{
    /// <summary>The supplies that may be used; null for all.</summary>
    public IReadOnlySet<string>? Only { get; init; }

    /// <summary>How long to look at the most; ten seconds unless set.</summary>
    public TimeSpan TimeLimit { get; init; } = TimeSpan.FromSeconds(10);
}
