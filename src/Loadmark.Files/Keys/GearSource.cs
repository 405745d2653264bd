namespace Loadmark.Files.Keys;

/// <summary>Where a rig file has the figures of a piece of gear from, other than from itself.</summary>
internal enum GearSource
{
    /// <summary>The gear library.</summary>
    Library,
}
