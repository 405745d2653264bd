namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Outlets that a label tells apart, while it is being read.</summary>
internal sealed class PrintedOutletGroup
{
    /// <summary>The outlets' ids as printed, made uniform; null when just a count is printed.</summary>
    public string? Ids { get; init; }

    /// <summary>How many outlets there are.</summary>
    public required int Count { get; init; }

    /// <summary>Whether nothing but a word before "output" tells the group from another.</summary>
    public bool IsNamedByWord { get; set; }

    /// <summary>Where the words and figures stand so far.</summary>
    public Place Place { get; set; }

    /// <summary>What is said of direct and alternating for the group's outlets alone.</summary>
    public FormMarks Forms { get; set; }

    /// <summary>What is said of the polarity of the group's outlets alone.</summary>
    public PolarityMarks Polarity { get; set; }

    /// <summary>What is said of the isolation of the group's outlets alone.</summary>
    public IsolationMarks Isolation { get; set; }
}
