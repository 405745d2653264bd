namespace Loadmark.Storage.Entities;

/// <summary>One change of a piece of gear: how the piece was after it. How it was before is what the change before left.</summary>
internal sealed class GearChangeRow : SealedRow
{
    public Guid GearId { get; set; }

    /// <summary>Counts up from 1; the piece's revision after the change.</summary>
    public long Number { get; set; }

    /// <summary>What the change did, for people.</summary>
    public string What { get; set; } = "";

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Made { get; set; }

    public string Tag { get; set; } = "";

    public string Name { get; set; } = "";

    public string Label { get; set; } = "";

    public string Words { get; set; } = "";

    public bool IsRemoved { get; set; }

    public byte[] Text { get; set; } = [];
}
