using Loadmark.Core.Readings;

namespace Loadmark.Storage.Entities;

/// <summary>One reading of a load's draw.</summary>
internal sealed class GearReadingRow : SealedRow
{
    public Guid Id { get; set; }

    public Guid GearId { get; set; }

    public DrawKind Kind { get; set; }

    /// <summary>The current that was measured, A.</summary>
    public decimal Current { get; set; }

    /// <summary>In seconds; null when it was not timed.</summary>
    public decimal? Duration { get; set; }

    /// <summary>How far the meter may be off, as a share of the reading; null when that is not known.</summary>
    public decimal? MeterShare { get; set; }

    /// <summary>And in amperes on top; null when that is not known.</summary>
    public decimal? MeterPlus { get; set; }

    /// <summary>UTC, in ticks of 100 ns.</summary>
    public long Taken { get; set; }

    public string? Note { get; set; }

    /// <summary>When the reading was struck out, in ticks (UTC); null while it counts.</summary>
    public long? Removed { get; set; }
}
