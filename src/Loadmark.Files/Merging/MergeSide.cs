namespace Loadmark.Files.Merging;

/// <summary>One of the two who edited the same rig.</summary>
public enum MergeSide
{
    /// <summary>The one who asks for the merge.</summary>
    Ours,

    /// <summary>The other one of the two.</summary>
    Theirs,
}
