namespace Loadmark.Codes.Packing;

/// <summary>What a code turned out to be.</summary>
public enum CodeKind
{
    /// <summary>A part of a rig file.</summary>
    Part,

    /// <summary>A code of something else.</summary>
    Foreign,

    /// <summary>A part of a rig file whose checksum is wrong.</summary>
    Damaged,

    /// <summary>A part of a rig file as a newer version of the program writes it.</summary>
    Newer,
}
