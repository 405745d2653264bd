namespace Loadmark.Files.Merging;

/// <summary>What sort of thing in a rig a change is about.</summary>
public enum MergePart
{
    /// <summary>The rig as a whole: its name, its mains, its headroom, the order of its lists.</summary>
    Rig,

    /// <summary>A load of the rig.</summary>
    Load,

    /// <summary>A supply of the rig.</summary>
    Supply,

    /// <summary>An outlet of a supply.</summary>
    Outlet,

    /// <summary>A group of outlets with a limit of its own.</summary>
    Bank,

    /// <summary>A lead of the rig.</summary>
    Lead,

    /// <summary>A feed of the wiring.</summary>
    Feed,

    /// <summary>The order of the signal path.</summary>
    Signal,
}
