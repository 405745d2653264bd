namespace Loadmark.Files.Parsing;

/// <summary>
/// How many outlets a file may still name. A range stands for many in a few letters, so a small file could otherwise
/// fill the memory.
/// </summary>
internal sealed class OutletAllowance
{
    /// <summary>The most outlets of a rig.</summary>
    public const int Most = 20_000;

    private int _left = Most;

    /// <summary>Takes some; false when there are not that many left.</summary>
    public bool TryTake(int count)
    {
        if (count > _left)
            return false;
        _left -= count;
        return true;
    }
}
