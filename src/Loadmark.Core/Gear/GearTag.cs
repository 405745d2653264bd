namespace Loadmark.Core.Gear;

/// <summary>Compares the tags of gear: <c>delay-2</c> and <c>DELAY-2</c> are one, and each is kept as it was typed.</summary>
public static class GearTag
{
    /// <summary>What two tags have in common exactly when they are the same tag: without spaces at the ends, in capitals.</summary>
    /// <param name="tag">The tag as typed.</param>
    public static string KeyOf(string tag)
    {
        ArgumentNullException.ThrowIfNull(tag);
        return tag.Trim().ToUpperInvariant();
    }
}
