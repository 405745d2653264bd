namespace Loadmark.Storage.Entities;

/// <summary>What all rows of one table come to: tells when one is missing, or there in an older state.</summary>
internal sealed class TotalRow : SealedRow
{
    /// <summary>The table's name.</summary>
    public string Table { get; set; } = "";

    /// <summary>How many rows it has.</summary>
    public long Rows { get; set; }

    /// <summary>The sum of their seals, as 64 bits that run over.</summary>
    public long Sum { get; set; }
}
