namespace Loadmark.Storage.Entities;

/// <summary>A count that goes up with each change of something.</summary>
internal sealed class CountRow : SealedRow
{
    /// <summary>The count of changes of the gear library.</summary>
    public const string Gear = "gear";

    /// <summary>The library's count when a backup was last put in its place: who has seen no later one reads all of it.</summary>
    public const string Restored = "restored";

    public string Name { get; set; } = "";

    public long Value { get; set; }
}
