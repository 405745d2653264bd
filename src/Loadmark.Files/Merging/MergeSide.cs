namespace Loadmark.Files.Merging;

/// <summary>One of the two who edited the same rig.</summary>
public enum MergeSide
{
    /// <summary>Who asks.</summary>
    Ours,

    /// <summary>The other.</summary>
    Theirs,
}
