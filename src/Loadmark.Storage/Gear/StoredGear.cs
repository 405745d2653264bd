namespace Loadmark.Storage.Gear;

/// <summary>A piece of gear as it is stored.</summary>
public sealed record StoredGear
{
    /// <summary>What the store knows the piece by; stays the same through every change.</summary>
    public required Guid Id { get; init; }

    /// <summary>What is said of the piece.</summary>
    public required GearContent Content { get; init; }

    /// <summary>
    /// 1 when it is added; up by one with every change, which has the same number. To be handed back with the next change.
    /// </summary>
    public required long Revision { get; init; }

    /// <summary>When the last change was made (UTC).</summary>
    public required DateTimeOffset Changed { get; init; }

    /// <summary>Whether the piece is removed: kept with its changes, and in no list.</summary>
    public bool IsRemoved { get; init; }
}
