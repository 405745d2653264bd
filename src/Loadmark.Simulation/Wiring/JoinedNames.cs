namespace Loadmark.Simulation.Wiring;

/// <summary>Names that are joined into groups, each group known by one of its names.</summary>
internal sealed class JoinedNames
{
    private readonly Dictionary<string, string> _joinedTo = new(StringComparer.Ordinal);

    /// <summary>Joins the groups of two names.</summary>
    public void Join(string one, string other)
    {
        var (first, second) = (Root(one), Root(other));
        if (first != second)
            _joinedTo[second] = first;
    }

    /// <summary>The name that its group is known by.</summary>
    public string Root(string name)
    {
        // Each step halves the path behind it, or a long chain would be walked again and again.
        while (_joinedTo.TryGetValue(name, out var next))
        {
            if (_joinedTo.TryGetValue(next, out var beyond))
                _joinedTo[name] = beyond;
            name = next;
        }

        return name;
    }
}
