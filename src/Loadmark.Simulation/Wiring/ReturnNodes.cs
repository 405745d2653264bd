using Loadmark.Circuits.Networks;
using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Wiring;

/// <summary>
/// The nodes of the returns. Returns that no lead joins have nothing in common in the circuit, so one of each such group is the
/// point that its voltages are measured from; the others are nodes of their own.
/// </summary>
internal sealed class ReturnNodes
{
    private readonly Dictionary<string, string> _joinedTo = new(StringComparer.Ordinal);

    /// <summary>Finds the groups.</summary>
    /// <param name="feeds">The feeds that are in the circuit.</param>
    public ReturnNodes(IEnumerable<WiredFeed> feeds)
    {
        foreach (var feed in feeds)
        {
            for (var position = 1; position < feed.Outlets.Length; position++)
            {
                var (one, other) = (Root(feed.Outlets[0].Rating.Return), Root(feed.Outlets[position].Rating.Return));
                if (one != other)
                    _joinedTo[other] = one;
            }
        }
    }

    /// <summary>The node of an outlet's return.</summary>
    public string Of(WiredOutlet outlet)
    {
        var name = outlet.Rating.Return;
        return _joinedTo.ContainsKey(name) ? $"return of {name}" : Netlist.Ground;
    }

    private string Root(string name)
    {
        while (_joinedTo.TryGetValue(name, out var next))
            name = next;
        return name;
    }
}
