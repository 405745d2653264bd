namespace Loadmark.Files.Entry;

/// <summary>What lines are read as.</summary>
public enum EntryKind
{
    /// <summary>Loads, one a line.</summary>
    Loads,

    /// <summary>Outlets of one supply, one or a range of them a line.</summary>
    Outlets,

    /// <summary>Supplies, each a line with the lines of its outlets below.</summary>
    Supplies,
}
