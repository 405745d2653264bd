namespace Loadmark.Files.Merging;

/// <summary>What sort of thing in a rig a change is about.</summary>
public enum MergePart
{
    /// <summary>The rig as a whole: its name, its mains, its headroom, the order of its lists.</summary>
    Rig,

    /// <summary>A load.</summary>
    Load,

    /// <summary>A supply.</summary>
    Supply,

    /// <summary>An outlet of a supply.</summary>
    Outlet,

    /// <summary>A group of outlets with a limit of its own.</summary>
    Bank,

    /// <summary>A lead.</summary>
    Lead,

    /// <summary>A feed.</summary>
    Feed,

    /// <summary>The order of the signal path.</summary>
    Signal,
}
