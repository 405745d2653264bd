using Loadmark.Circuits.Networks;
using Loadmark.Core.Collections;
using Loadmark.Core.Ratings;

namespace Loadmark.Simulation.Wiring;

/// <summary>
/// The nodes of the returns. Returns that no lead joins have nothing in common in the circuit, so one of each such group is the
/// point that its voltages are measured from; the others are nodes of their own.
/// </summary>
internal sealed class ReturnNodes
{
    private readonly UnionFind<string> _joined = new();

    /// <summary>Finds the groups.</summary>
    /// <param name="feeds">The feeds that are in the circuit.</param>
    public ReturnNodes(IEnumerable<WiredFeed> feeds)
    {
        foreach (var feed in feeds)
        {
            for (var position = 1; position < feed.Outlets.Length; position++)
                _joined.Join(feed.Outlets[0].Rating.Return, feed.Outlets[position].Rating.Return);
        }
    }

    /// <summary>The node of an outlet's return.</summary>
    public string Of(WiredOutlet outlet)
    {
        var name = outlet.Rating.Return;
        return _joined.Find(name) == name ? Netlist.Ground : $"return of {name}";
    }
}
