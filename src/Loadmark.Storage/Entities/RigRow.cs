namespace Loadmark.Storage.Entities;

/// <summary>A rig in its table.</summary>
internal sealed class RigRow : SealedRow
{
    public Guid Id { get; set; }

    public string Name { get; set; } = "";

    public long Revision { get; set; }

    /// <summary>The number of the edit that was made last and is not undone; 0 when there is none.</summary>
    public long Present { get; set; }

    /// <summary>UTC, in ticks of 100 ns, because SQLite has no type for a moment that sorts.</summary>
    public long Changed { get; set; }

    /// <summary>When the rig was removed, in ticks (UTC); null while it is not.</summary>
    public long? Removed { get; set; }

    /// <summary>The text as it is now, packed. The last column, so that listing rigs reads none of it.</summary>
    public byte[] Text { get; set; } = [];

    /// <summary>The revision whose text its rows among the uses of gear were found from; 0 when they never were.</summary>
    public long UsesRevision { get; set; }
}
