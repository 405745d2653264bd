namespace Loadmark.Storage.Gear;

/// <summary>What became of a change of the library.</summary>
public enum GearState
{
    /// <summary>The change is made, and on the disk.</summary>
    Saved,

    /// <summary>Somebody else changed the piece in between; nothing was done.</summary>
    Conflict,

    /// <summary>The piece was removed, or never was; nothing was done.</summary>
    Gone,

    /// <summary>Another piece of the kind has the tag; nothing was done.</summary>
    TagTaken,
}
