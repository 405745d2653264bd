namespace Loadmark.Storage.Entities;

/// <summary>What was measured on a rig once it was built.</summary>
internal sealed class AcceptanceRow : SealedRow
{
    public Guid Id { get; set; }

    public Guid RigId { get; set; }

    /// <summary>1 when it is begun; up by one with every change.</summary>
    public long Revision { get; set; }

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Begun { get; set; }

    /// <summary>When it was changed last, in ticks (UTC).</summary>
    public long Changed { get; set; }

    /// <summary>When it was signed, in ticks (UTC); null while it is being measured. A signed one stays as it is.</summary>
    public long? Signed { get; set; }

    /// <summary>The version of the rig that was measured.</summary>
    public string Version { get; set; } = "";

    /// <summary>What came of it when it was changed last, in a word.</summary>
    public string Verdict { get; set; } = "";

    /// <summary>Who measured what, packed.</summary>
    public byte[] Readings { get; set; } = [];

    /// <summary>The rig that was measured, packed.</summary>
    public byte[] RigText { get; set; } = [];
}
