namespace Loadmark.Workshop.Sheets;

/// <summary>What somebody typed of a sheet, at the command line, in an address or on the page. Null and empty: nothing.</summary>
public sealed record TypedSheet
{
    /// <summary>The words for the parts; none for all.</summary>
    public IReadOnlyList<string> Only { get; init; } = [];

    /// <summary>The word for the paper.</summary>
    public string? Paper { get; init; }

    /// <summary>The size of labels, such as <c>45x16</c>.</summary>
    public string? Labels { get; init; }

    /// <summary>Whom the player is to ask.</summary>
    public string? Contact { get; init; }

    /// <summary>The reels that there are, such as <c>25 m</c> or <c>10 m x 2</c>.</summary>
    public IReadOnlyList<string> Reels { get; init; } = [];

    /// <summary>What the two ends of a stretch of cable take up, such as <c>40 mm</c>.</summary>
    public string? Ends { get; init; }

    /// <summary>What a cut takes away, such as <c>2 mm</c>.</summary>
    public string? Cut { get; init; }
}
