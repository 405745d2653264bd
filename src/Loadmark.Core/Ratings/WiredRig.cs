using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>
/// A rig with every name looked up, every rating joined and every sum made: what the rules judge, a plan starts from
/// and a circuit is built from.
/// </summary>
public sealed class WiredRig
{
    private IReadOnlySet<string>? _dead;

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

    /// <summary>The rig's supplies, in the order of the file.</summary>
    public ValueList<SupplyRating> Supplies { get; }

    /// <summary>All outlets of all supplies, in the order of the file.</summary>
    public ValueList<WiredOutlet> Outlets { get; }

    /// <summary>The rig's loads, in the order of the file.</summary>
    public ValueList<WiredLoad> Loads { get; }

    /// <summary>The rig's feeds, in the order of the file; empty when nothing is wired.</summary>
    public ValueList<WiredFeed> Feeds { get; }

    /// <summary>The returns that carry at least one load, in the order of the wiring.</summary>
    public ValueList<ReturnGroup> Returns { get; }

    /// <summary>
    /// The ids of the supplies that are to be fed by others and are not: by nothing, or by supplies that nothing stands behind which runs
    /// from the mains, be it themselves. Their outlets give nothing.
    /// </summary>
    public IReadOnlySet<string> DeadSupplies => _dead ??= DeadWhenFed(new HashSet<string>(StringComparer.Ordinal));

    /// <summary>The supplies that would be among <see cref="DeadSupplies"/> still if some of them were fed.</summary>
    /// <param name="fed">The ids of those.</param>
    public HashSet<string> DeadWhenFed(IReadOnlySet<string> fed)
    {
        var waiting = Rig.Supplies.Items.Where(SupplyInput.MustBeFed).Select(static supply => supply.Id).ToHashSet(StringComparer.Ordinal);
        waiting.ExceptWith(fed);
        if (waiting.Count == 0)
            return waiting;
        var inputs = Loads.Items.Where(load => waiting.Contains(load.Id)).ToList();
        while (waiting.RemoveWhere(supply => inputs.Exists(input => input.Id == supply && !IsDead(input, waiting))) > 0)
        {
        }

        return waiting;
    }

    /// <summary>Whether a feed takes from an outlet of a supply.</summary>
    /// <param name="supply">The supply's id.</param>
    public bool IsInUse(string supply) => Outlets.Items.Any(outlet => outlet.Rating.Supply.Id == supply && outlet.Feeds.Count > 0);

    /// <summary>Whether a load is fed by nothing, or only by supplies that give nothing.</summary>
    /// <param name="load">One of the rig's loads.</param>
    public bool IsDark(WiredLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return load.Feeds.Count == 0 || IsDead(load, DeadSupplies);
    }

    private static bool IsDead(WiredLoad load, IReadOnlySet<string> dead) =>
        load.Feeds.All(feed => feed.Outlets.Any(outlet => dead.Contains(outlet.Rating.Supply.Id)));

    /// <summary>Looks up and joins everything in a rig.</summary>
    /// <exception cref="InvalidRigException">
    /// The rig repeats an id, refers to a load, outlet or lead that it does not have, or sets an outlet to a voltage
    /// that it does not give. A rig from the reader of rig files never does.
    /// </exception>
    public static WiredRig Of(Rig rig) => new WiredRigBuilder(rig).Build();

    /// <summary>
    /// Looks up and joins everything in a rig, but that some supplies which are fed by others do not join the returns of their outlets with
    /// what feeds them: less meets on a return than in truth, so that what is found bad in it is bad indeed.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="apart">The ids of those supplies.</param>
    /// <exception cref="InvalidRigException">As <see cref="Of"/>.</exception>
    public static WiredRig WithInputsApart(Rig rig, IReadOnlySet<string> apart) => new WiredRigBuilder(rig, apart).Build();
}
