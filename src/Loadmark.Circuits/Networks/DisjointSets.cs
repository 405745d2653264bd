namespace Loadmark.Circuits.Networks;

/// <summary>Which names have been joined with which.</summary>
internal sealed class DisjointSets
{
    private readonly Dictionary<string, string> _parents = [];

    /// <summary>The name that stands for all that are joined with the given one.</summary>
    public string Find(string name)
    {
        _parents.TryAdd(name, name);
        while (_parents[name] != name)
        {
            _parents[name] = _parents[_parents[name]];
            name = _parents[name];
        }

        return name;
    }

    /// <summary>Joins two; false where they were joined already.</summary>
    public bool Join(string one, string other)
    {
        var (first, second) = (Find(one), Find(other));
        if (first == second)
            return false;
        _parents[first] = second;
        return true;
    }
}
