namespace Loadmark.Storage.Acceptances;

/// <summary>The record of measuring a rig, as it is stored.</summary>
public sealed record StoredAcceptance
{
    /// <summary>What the store knows it by.</summary>
    public required Guid Id { get; init; }

    /// <summary>The rig.</summary>
    public required Guid Rig { get; init; }

    /// <summary>1 when it is begun; up by one with every change. To be handed back with the next one.</summary>
    public required long Revision { get; init; }

    /// <summary>When it was begun (UTC).</summary>
    public required DateTimeOffset Begun { get; init; }

    /// <summary>When it was changed last (UTC).</summary>
    public required DateTimeOffset Changed { get; init; }

    /// <summary>When it was signed (UTC); null while it is being measured. A signed one stays as it is.</summary>
    public required DateTimeOffset? Signed { get; init; }

    /// <summary>What is kept.</summary>
    public required AcceptanceContent Content { get; init; }
}
