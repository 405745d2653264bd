namespace Loadmark.Storage.Rigs;

/// <summary>A rig as it is stored.</summary>
public sealed record StoredRig
{
    /// <summary>What the store knows the rig by; stays the same through every edit.</summary>
    public required Guid Id { get; init; }

    /// <summary>The rig's name.</summary>
    public required string Name { get; init; }

    /// <summary>The rig file's text, with its comments, to the letter as it was saved.</summary>
    public required string Text { get; init; }

    /// <summary>
    /// 1 when the rig is added; grows with every change, undoing and redoing among them. To be handed back with the next change.
    /// </summary>
    public required long Revision { get; init; }

    /// <summary>What the edit did that undoing would take back; null when there is nothing to undo.</summary>
    public required string? UndoWhat { get; init; }

    /// <summary>What the edit did that redoing would bring back; null when there is nothing to redo.</summary>
    public required string? RedoWhat { get; init; }

    /// <summary>When the last change was made (UTC).</summary>
    public required DateTimeOffset Changed { get; init; }
}
