using System.Collections.Immutable;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>
/// Expands the leads on hand into slots, one for each lead that could be used, or in a pooled problem for each kind; an instance serves
/// once.
/// </summary>
/// <param name="pinned">The rig with its pinned feeds only.</param>
/// <param name="outlets">The outlets that may be used.</param>
/// <param name="classes">What leads may take from.</param>
/// <param name="loads">How many loads there are to feed.</param>
/// <param name="isPooled">Whether leads that are alike are one slot.</param>
/// <param name="homes">
/// Where loads are plugged in now, if as few as possible are to be moved: then a chain may have one load too, as it may have now.
/// </param>
internal sealed class LeadSlotBuilder(
    WiredRig pinned,
    List<OutletGroup> outlets,
    FeedClassBuilder classes,
    int loads,
    bool isPooled,
    ImmutableDictionary<int, LoadHome>? homes)
{
    private readonly HashSet<string> _present = [.. (homes?.Values ?? []).Select(static home => home.Lead).OfType<string>()];

    private int LeastOfPlain => homes is null ? 2 : 1;

    /// <summary>The slots, those of one kind side by side.</summary>
    public List<LeadSlot> Slots { get; } = [];

    /// <summary>For each kind the ids of its leads, one for each slot.</summary>
    public List<ImmutableArray<string>> SlotLeads { get; } = [];

    /// <summary>Leads for one load that do more than a plain one.</summary>
    public List<SingleLead> Singles { get; } = [];

    /// <summary>Fills the lists.</summary>
    public void Build()
    {
        var singles = classes.Singles();
        var kinds = pinned.Rig.Leads.Items.GroupBy(lead => (lead.Type, lead.Plug, Plugs: Math.Min(lead.LoadPlugs ?? loads, loads)));
        foreach (var kind in kinds)
        {
            var ids = kind.OrderBy(lead => !_present.Contains(lead.Id))
                .SelectMany(lead => Enumerable.Repeat(lead.Id, LeadsLeft.Of(lead, pinned, loads))).ToList();
            var (type, plug, plugs) = kind.Key;
            var ends = new LeadEnds(type == LeadType.Reversing, plug);
            switch (type)
            {
                case LeadType.Series:
                    Add(ids, 1, plugs, ends, classes.SeriesPairs());
                    break;
                case LeadType.Parallel:
                    Add(ids, 1, plugs, ends, classes.ParallelPairs());
                    break;
                case LeadType.DaisyChain when plug is null:
                    Add(ids, LeastOfPlain, plugs, ends, singles);
                    break;
                default:
                    AddOther(ids, plugs, ends, singles);
                    break;
            }
        }
    }

    /// <summary>A lead that is worth using for one load alone, but for straight ones that are as good as a plain one.</summary>
    private void AddOther(List<string> ids, int plugs, LeadEnds ends, ImmutableArray<FeedClass> singles)
    {
        if (plugs > 1)
            Add(ids, ends == LeadEnds.Plain ? LeastOfPlain : 1, plugs, ends, singles);
        else if (ends != LeadEnds.Plain && ids.Count > 0)
            Singles.Add(new SingleLead(Singles.Count, ends, [.. ids]));
    }

    private void Add(List<string> ids, int least, int plugs, LeadEnds ends, ImmutableArray<FeedClass> from)
    {
        var most = Math.Min(loads / least, outlets.Sum(group => group.Count));
        var count = Math.Min(ids.Count, most);
        if (plugs < least || from.Length == 0 || count <= 0)
            return;

        for (var place = 0; place < (isPooled ? 1 : count); place++)
            Slots.Add(new LeadSlot(SlotLeads.Count, isPooled ? count : 1, least, plugs, ends, from));
        SlotLeads.Add([.. ids.Take(count)]);
    }
}
