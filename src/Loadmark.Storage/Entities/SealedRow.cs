namespace Loadmark.Storage.Entities;

/// <summary>A row that tells whether it is as it was saved.</summary>
internal abstract class SealedRow
{
    /// <summary>A checksum of all other values of the row and of its table's name; set whenever the row is saved.</summary>
    public long Seal { get; set; }
}
