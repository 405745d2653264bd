namespace Loadmark.Storage.Entities;

/// <summary>One edit of a rig, with what it takes to undo and to redo it.</summary>
internal sealed class EditRow : SealedRow
{
    public Guid RigId { get; set; }

    /// <summary>Counts up from 1 in the order of the rig's edits.</summary>
    public long Number { get; set; }

    /// <summary>What the edit did, for people.</summary>
    public string What { get; set; } = "";

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Made { get; set; }

    public string NameBefore { get; set; } = "";

    public string NameAfter { get; set; } = "";

    /// <summary>Where the texts before and after begin to differ, in UTF-16 units.</summary>
    public int Start { get; set; }

    /// <summary>What stood there before the edit, packed.</summary>
    public byte[] Before { get; set; } = [];

    /// <summary>What stands there after the edit, packed.</summary>
    public byte[] After { get; set; } = [];
}
