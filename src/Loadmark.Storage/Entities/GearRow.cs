using Loadmark.Core.Gear;

namespace Loadmark.Storage.Entities;

/// <summary>A piece of gear in its table: as it is now.</summary>
internal sealed class GearRow : SealedRow
{
    public Guid Id { get; set; }

    public GearKind Kind { get; set; }

    /// <summary>The tag as it was typed.</summary>
    public string Tag { get; set; } = "";

    /// <summary>What makes the tag the same as others; null while the gear is removed, so that another may have its tag.</summary>
    public string? TagKey { get; set; }

    public string Name { get; set; } = "";

    public string Label { get; set; } = "";

    /// <summary>The words the piece is filed under, a line each.</summary>
    public string Words { get; set; } = "";

    /// <summary>The number of the last change.</summary>
    public long Revision { get; set; }

    /// <summary>The library's count of changes at the last one of this piece: tells what is new since another count.</summary>
    public long Stamp { get; set; }

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Changed { get; set; }

    public bool IsRemoved { get; set; }

    /// <summary>Packed. The last column, so that what does not ask for it reads none of it.</summary>
    public byte[] Text { get; set; } = [];
}
