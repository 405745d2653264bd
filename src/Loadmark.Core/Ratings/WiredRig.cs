using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>
/// A rig with every name looked up, every rating joined and every sum made: what the rules judge, a plan starts from
/// and a circuit is built from.
/// </summary>
public sealed class WiredRig
{
    internal WiredRig(
        Rig rig,
        ValueList<SupplyRating> supplies,
        ValueList<WiredOutlet> outlets,
        ValueList<WiredLoad> loads,
        ValueList<WiredFeed> feeds,
        ValueList<ReturnGroup> returns)
    {
        Rig = rig;
        Supplies = supplies;
        Outlets = outlets;
        Loads = loads;
        Feeds = feeds;
        Returns = returns;
    }

    /// <summary>The rig as the file has it.</summary>
    public Rig Rig { get; }

    /// <summary>Its supplies, in the order of the file.</summary>
    public ValueList<SupplyRating> Supplies { get; }

    /// <summary>All outlets of all supplies, in the order of the file.</summary>
    public ValueList<WiredOutlet> Outlets { get; }

    /// <summary>Its loads, in the order of the file.</summary>
    public ValueList<WiredLoad> Loads { get; }

    /// <summary>Its feeds, in the order of the file; empty when nothing is wired.</summary>
    public ValueList<WiredFeed> Feeds { get; }

    /// <summary>The returns that carry at least one load, in the order of the wiring.</summary>
    public ValueList<ReturnGroup> Returns { get; }

    /// <summary>Looks up and joins everything in a rig.</summary>
    /// <exception cref="InvalidRigException">
    /// The rig repeats an id, refers to a load, outlet or lead that it does not have, or sets an outlet to a voltage
    /// that it does not give. A rig from the reader of rig files never does.
    /// </exception>
    public static WiredRig Of(Rig rig) => new WiredRigBuilder(rig).Build();
}
