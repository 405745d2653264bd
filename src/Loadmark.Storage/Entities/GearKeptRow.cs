namespace Loadmark.Storage.Entities;

/// <summary>That somebody chose to keep a rig's own figures when a piece of gear changed.</summary>
internal sealed class GearKeptRow
{
    public Guid RigId { get; set; }

    public Guid GearId { get; set; }

    /// <summary>The revision of the gear that was turned down; a later one asks again.</summary>
    public long Revision { get; set; }

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Made { get; set; }
}
