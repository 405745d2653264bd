namespace Loadmark.Storage.Rigs;

/// <summary>What became of a change.</summary>
public enum SaveState
{
    /// <summary>The rig is now as asked, and that is on the disk.</summary>
    Saved,

    /// <summary>Somebody else changed the rig in between; nothing was done.</summary>
    Conflict,

    /// <summary>The rig was removed, or never was; nothing was done.</summary>
    Gone,
}
