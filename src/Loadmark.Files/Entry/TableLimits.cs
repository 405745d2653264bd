namespace Loadmark.Files.Entry;

/// <summary>How much of a table is read at once.</summary>
/// <param name="Lines">The most lines with text.</param>
/// <param name="Characters">The most characters.</param>
internal sealed record TableLimits(int Lines, int Characters)
{
    /// <summary>What is entered into a rig.</summary>
    public static TableLimits OfEntry { get; } = new(EntryResult.MostLines, RigFileReader.MostBytes);
}
