namespace Loadmark.Core.Ratings;

/// <summary>All loads whose 0 V sides are joined through outlets and leads.</summary>
public sealed class ReturnGroup
{
    /// <summary>Up to this many, looking through a list is quicker than a table.</summary>
    private const int Few = 8;

    private readonly List<WiredLoad> _loads = new(1);
    private readonly List<string> _names = new(1);
    private HashSet<WiredLoad>? _knownLoads;
    private HashSet<string>? _knownNames;

    /// <summary>The loads on this return, each once, in the order of the wiring.</summary>
    public IReadOnlyList<WiredLoad> Loads => _loads;

    /// <summary>The outlets and supplies whose return it is, as ids of the rig: <c>brick/5</c> or <c>brick</c>.</summary>
    public IReadOnlyList<string> Names => _names;

    /// <summary>Whether a feed is on the return: all returns that nothing is on are told as one group without names.</summary>
    public bool IsInUse => _names.Count > 0;

    internal void Add(WiredLoad load) => AddOnce(_loads, load, ref _knownLoads);

    internal void AddName(string name) => AddOnce(_names, name, ref _knownNames);

    private static void AddOnce<T>(List<T> items, T item, ref HashSet<T>? known)
    {
        if (items.Count <= Few ? items.Contains(item) : !(known ??= [.. items]).Add(item))
            return;
        items.Add(item);
    }
}
