using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Trials;

/// <summary>Changes to a rig's wiring that keep it whole: no feed is left without loads.</summary>
public static class WiringEdits
{
    /// <summary>
    /// Whether a lead is on hand that no feed uses. A straight one that gives no count is there as often as it is wanted.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="lead">The lead; one of the rig's.</param>
    public static bool HasFree(this Rig rig, Lead lead)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(lead);
        return lead is { Type: LeadType.Straight, Count: null }
            || (rig.Wired ?? []).Items.Count(feed => feed.Lead == lead.Id) < (lead.Count ?? 1);
    }

    /// <summary>The rig with loads taken off whatever feeds them.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="loads">The tags of the loads.</param>
    public static Rig Unplug(this Rig rig, params IEnumerable<string> loads)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var off = loads.ToHashSet(StringComparer.Ordinal);
        return rig.Wired is { } wired ? rig with { Wired = [.. wired.Items.Select(feed => Without(feed, off)).OfType<Feed>()] } : rig;
    }

    /// <summary>The rig with one feed in another's place.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="index">The feed's place in the wiring, from 0.</param>
    /// <param name="feed">The feed to be there.</param>
    public static Rig Replace(this Rig rig, int index, Feed feed)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig with { Wired = new ValueList<Feed>((rig.Wired ?? []).Items.SetItem(index, feed)) };
    }

    /// <summary>The rig with one feed more.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="feed">The feed.</param>
    public static Rig Plug(this Rig rig, Feed feed)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig with { Wired = [.. rig.Wired ?? [], feed] };
    }

    /// <summary>
    /// The rig with a load on an outlet as it is known to be plugged, right or wrong: nothing is chosen for it but what has to be there. On
    /// a free outlet that is a plain lead, and no setting is said; on one that feeds others already, the lead that is there, or a daisy
    /// chain on hand that no other feed uses where the lead has too few plugs. The rules say what comes of it.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="outlet">The outlet; one of the rig's.</param>
    /// <param name="load">The load's tag; one of <see cref="Rig.EveryLoad"/>.</param>
    public static Rig PlugAsItIs(this Rig rig, OutletRef outlet, string load)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var rest = rig.Unplug(load);
        var index = rest.PlaceOfFeed(outlet);
        if (index < 0)
            return rest.Plug(new Feed { From = [outlet], To = [load] });
        var feed = rest.Wired!.Value[index];
        feed = feed with { To = [.. feed.To, load] };
        var chain = rest.Leads.Items.FirstOrDefault(lead => lead.Id == feed.Lead) is { } lead && lead.HasPlugsFor(feed.To.Count)
            ? feed.Lead
            : rest.Leads.Items.FirstOrDefault(lead => lead.HasPlugsFor(feed.To.Count) && rest.HasFree(lead))?.Id ?? feed.Lead;
        return rest.Replace(index, feed with { Lead = chain });
    }

    /// <summary>The place in the wiring, from 0, of the first feed that takes from an outlet; -1 where none does.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="outlet">The outlet.</param>
    internal static int PlaceOfFeed(this Rig rig, OutletRef outlet)
    {
        var feeds = (rig.Wired ?? []).Items;
        for (var index = 0; index < feeds.Length; index++)
        {
            if (feeds[index].From.Items.Contains(outlet))
                return index;
        }

        return -1;
    }

    /// <summary>
    /// Whether a lead is a daisy chain with a plug for each of several loads. One that gives no count has as many as are wanted.
    /// </summary>
    /// <param name="lead">The lead.</param>
    /// <param name="loads">How many loads there are.</param>
    public static bool HasPlugsFor(this Lead lead, int loads)
    {
        ArgumentNullException.ThrowIfNull(lead);
        return lead.Type == LeadType.DaisyChain && (lead.LoadPlugs ?? int.MaxValue) >= loads;
    }

    /// <summary>The rig without a load, wherever it is mentioned.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="id">The load's tag.</param>
    public static Rig RemoveLoad(this Rig rig, string id)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.Unplug(id) with
        {
            Loads = [.. rig.Loads.Items.Where(load => load.Id != id)],
            Signal = [.. rig.Signal.Items.Where(word => word != id)],
        };
    }

    /// <summary>The rig without a supply, and without the feeds that take from it or feed it.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="id">The supply's id.</param>
    public static Rig RemoveSupply(this Rig rig, string id)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.WithoutFeeds(outlet => outlet.Supply == id).WithoutInput(id) with
        {
            Supplies = [.. rig.Supplies.Items.Where(supply => supply.Id != id)],
        };
    }

    /// <summary>
    /// The rig with a supply in another's place. Feeds from outlets that it does not have go, and so do banks that none of its outlets
    /// names, settings of feeds to voltages that their outlets no longer give, and the feed of an input that its label no longer prints.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="index">The supply's place, from 0.</param>
    /// <param name="supply">The supply to be there, of the same id.</param>
    public static Rig PutSupply(this Rig rig, int index, Supply supply)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(supply);
        var whole =
            supply with { Banks = [.. supply.Banks.Items.Where(bank => supply.Outlets.Items.Any(outlet => outlet.Bank == bank.Name))] };
        var left = rig.WithoutFeeds(outlet => outlet.Supply == supply.Id && !supply.Outlets.Items.Any(one => one.Id == outlet.Outlet));
        if (SupplyInput.Of(whole) is null)
            left = left.WithoutInput(supply.Id);
        return left with
        {
            Supplies = new ValueList<Supply>(rig.Supplies.Items.SetItem(index, whole)),
            Wired = left.Wired is { } wired ? [.. wired.Items.Select(feed => Fits(feed, whole) ? feed : feed with { At = [] })] : null,
        };
    }

    /// <summary>
    /// The rig without one outlet, the feeds that take from it, and its bank where no other outlet is of it. A supply keeps at least one
    /// outlet.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="gone">The outlet.</param>
    public static Rig RemoveOutlet(this Rig rig, OutletRef gone)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.WithoutFeeds(outlet => outlet == gone) with
        {
            Supplies = [.. rig.Supplies.Items.Select(supply => supply.Id == gone.Supply && supply.Outlets.Count > 1
                ? WithoutOutlet(supply, gone.Outlet)
                : supply)],
        };
    }

    /// <summary>
    /// The rig without a lead. Feeds that used it keep their loads on a plain one where that has plugs enough, else lose them.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="id">The lead's name.</param>
    public static Rig RemoveLead(this Rig rig, string id)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var kept = (rig.Wired ?? []).Items
            .Where(feed => feed.Lead != id || (feed.To.Count == 1 && feed.From.Count == 1))
            .Select(feed => feed.Lead == id ? feed with { Lead = null } : feed);
        return rig with { Leads = [.. rig.Leads.Items.Where(lead => lead.Id != id)], Wired = rig.Wired is null ? null : [.. kept] };
    }

    /// <summary>The rig with a load's tag changed wherever it is mentioned.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="from">The tag as it is.</param>
    /// <param name="to">The tag to be; not another load's.</param>
    public static Rig RenameLoad(this Rig rig, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(rig);
        string New(string id) => id == from ? to : id;
        return rig with
        {
            Loads = [.. rig.Loads.Items.Select(load => load.Id == from ? load with { Id = to, FromLibrary = null } : load)],
            Signal = [.. rig.Signal.Items.Select(New)],
            Wired = rig.Wired is { } wired ? [.. wired.Items.Select(feed => feed with { To = [.. feed.To.Items.Select(New)] })] : null,
        };
    }

    /// <summary>The rig with a supply's id changed wherever it is mentioned.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="from">The id as it is.</param>
    /// <param name="to">The id to be; not another supply's.</param>
    public static Rig RenameSupply(this Rig rig, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var isLoad = rig.Loads.Items.Any(load => load.Id == from);
        return rig with
        {
            Supplies = [.. rig.Supplies.Items.Select(supply => supply.Id == from ? supply with { Id = to, FromLibrary = null } : supply)],
            Wired = rig.Wired is { } wired
                ? [.. wired.Items.Select(feed => feed with
                {
                    From = [.. feed.From.Items.Select(outlet => outlet.Supply == from ? outlet with { Supply = to } : outlet)],
                    To = isLoad ? feed.To : [.. feed.To.Items.Select(id => id == from ? to : id)],
                })]
                : null,
        };
    }

    /// <summary>The rig with a lead's name changed wherever it is mentioned.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="from">The name as it is.</param>
    /// <param name="to">The name to be; not another lead's.</param>
    public static Rig RenameLead(this Rig rig, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig with
        {
            Leads = [.. rig.Leads.Items.Select(lead => lead.Id == from ? lead with { Id = to } : lead)],
            Wired = rig.Wired is { } wired ? [.. wired.Items.Select(feed => feed.Lead == from ? feed with { Lead = to } : feed)] : null,
        };
    }

    /// <summary>The rig without what feeds a supply's input; a load of the same id stays fed.</summary>
    private static Rig WithoutInput(this Rig rig, string supply) =>
        rig.Loads.Items.Any(load => load.Id == supply) ? rig : rig.Unplug(supply);

    /// <summary>Whether every outlet of a supply that a feed takes from gives the voltage that the feed sets it to.</summary>
    private static bool Fits(Feed feed, Supply supply)
    {
        for (var place = 0; place < feed.From.Count; place++)
        {
            if (feed.From[place].Supply != supply.Id || feed.SettingOf(place) is not { } volts
                || supply.Outlets.Items.FirstOrDefault(outlet => outlet.Id == feed.From[place].Outlet) is not { } outlet)
                continue;
            if (!OutletRating.Of(supply, outlet).CanBeSetTo(volts))
                return false;
        }

        return true;
    }

    /// <summary>A bank that no outlet names would make a rig file that is refused.</summary>
    private static Supply WithoutOutlet(Supply supply, string id)
    {
        var bank = supply.Outlets.Items.FirstOrDefault(outlet => outlet.Id == id)?.Bank;
        ValueList<Outlet> left = [.. supply.Outlets.Items.Where(outlet => outlet.Id != id)];
        return supply with
        {
            Outlets = left,
            Banks = [.. supply.Banks.Items.Where(one => one.Name != bank || left.Items.Any(outlet => outlet.Bank == bank))],
        };
    }

    private static Rig WithoutFeeds(this Rig rig, Func<OutletRef, bool> isGone) =>
        rig.Wired is { } wired ? rig with { Wired = [.. wired.Items.Where(feed => !feed.From.Items.Any(isGone))] } : rig;

    private static Feed? Without(Feed feed, HashSet<string> off)
    {
        if (!feed.To.Items.Any(off.Contains))
            return feed;
        ValueList<string> left = [.. feed.To.Items.Where(id => !off.Contains(id))];
        return left.Count == 0 ? null : feed with { To = left };
    }
}
