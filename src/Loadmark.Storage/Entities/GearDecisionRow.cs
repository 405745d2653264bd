namespace Loadmark.Storage.Entities;

/// <summary>What somebody decided for a rig when a piece of gear that it has was changed.</summary>
internal sealed class GearDecisionRow : SealedRow
{
    public Guid RigId { get; set; }

    public Guid GearId { get; set; }

    /// <summary>The revision of the gear that the decision is about; a later one asks again.</summary>
    public long Revision { get; set; }

    /// <summary>Whether the rig takes what is new; else it keeps what it had.</summary>
    public bool TakesNew { get; set; }

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Made { get; set; }
}
