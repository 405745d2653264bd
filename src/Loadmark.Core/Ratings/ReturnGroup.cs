namespace Loadmark.Core.Ratings;

/// <summary>All loads whose 0 V sides are joined through outlets and leads.</summary>
public sealed class ReturnGroup
{
    private readonly HashSet<WiredLoad> _known = [];
    private readonly List<WiredLoad> _loads = [];
    private readonly List<string> _names = [];

    /// <summary>The loads on this return, each once, in the order of the wiring.</summary>
    public IReadOnlyList<WiredLoad> Loads => _loads;

    /// <summary>The outlets and supplies whose return it is, as ids of the rig: <c>brick/5</c> or <c>brick</c>.</summary>
    public IReadOnlyList<string> Names => _names;

    internal void Add(WiredLoad load)
    {
        if (_known.Add(load))
            _loads.Add(load);
    }

    internal void AddName(string name)
    {
        if (!_names.Contains(name))
            _names.Add(name);
    }
}
