using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Expands the leads on hand into slots, one for each lead that could be used; used once.</summary>
internal sealed class LeadSlotBuilder(WiredRig pinned, List<OutletGroup> outlets, ImmutableArray<Source> singles, int loads, decimal headroom)
{
    /// <summary>The slots, those of one kind side by side.</summary>
    public List<LeadSlot> Slots { get; } = [];

    /// <summary>For each kind the ids of its leads, one for each slot.</summary>
    public List<ImmutableArray<string>> SlotLeads { get; } = [];

    /// <summary>The ids of reversing leads with one plug, one for each lead.</summary>
    public List<string> Reversing { get; } = [];

    /// <summary>Fills the lists.</summary>
    public void Build()
    {
        var kinds = pinned.Rig.Leads.Items.GroupBy(lead => (lead.Type, Plugs: Math.Min(lead.LoadPlugs ?? loads, loads)));
        foreach (var kind in kinds)
        {
            var ids = kind.SelectMany(lead => Enumerable.Repeat(lead.Id, Left(lead))).ToList();
            switch (kind.Key.Type)
            {
                case LeadType.Reversing when kind.Key.Plugs == 1:
                    Reversing.AddRange(ids);
                    break;
                case LeadType.Reversing:
                    Add(ids, 1, kind.Key.Plugs, reverses: true, singles);
                    break;
                case LeadType.Series:
                    Add(ids, 1, kind.Key.Plugs, reverses: false, [.. SeriesPairs()]);
                    break;
                case LeadType.Parallel:
                    Add(ids, 1, kind.Key.Plugs, reverses: false, [.. ParallelPairs()]);
                    break;
                default:
                    Add(ids, 2, kind.Key.Plugs, reverses: false, [.. singles.Where(source => source.AllowsSeveral)]);
                    break;
            }
        }
    }

    private void Add(List<string> ids, int least, int plugs, bool reverses, ImmutableArray<Source> sources)
    {
        var most = Math.Min(loads / least, outlets.Sum(group => group.Count));
        var count = Math.Min(ids.Count, most);
        if (plugs < least || sources.Length == 0 || count <= 0)
            return;

        for (var place = 0; place < count; place++)
            Slots.Add(new LeadSlot(SlotLeads.Count, least, plugs, reverses, sources));
        SlotLeads.Add([.. ids.Take(count)]);
    }

    private int Left(Lead lead) => Math.Clamp((lead.Count ?? 1) - pinned.Feeds.Items.Count(feed => feed.Lead?.Id == lead.Id), 0, loads);

    /// <summary>
    /// Pairs of d.c. outlets of one polarity that each have a return of their own. Of two outlets in different order
    /// only one pair is kept, unless they end in different plugs: the first's counts.
    /// </summary>
    private IEnumerable<Source> SeriesPairs()
    {
        var parts = singles.Select(source => source.Parts[0])
            .Where(part => part.Group.SharedReturn is null && part.Group.Rating.Form.Value == SupplyForm.Direct).ToList();
        for (var one = 0; one < parts.Count; one++)
        {
            for (var other = 0; other < parts.Count; other++)
            {
                var (first, second) = (parts[one], parts[other]);
                var isRepeat = other < one && first.Group.Rating.Plug.Value == second.Group.Rating.Plug.Value;
                if (isRepeat || (first.Group == second.Group && first.Group.Count < 2))
                    continue;
                if (first.Group.Rating.Polarity.Value == second.Group.Rating.Polarity.Value)
                    yield return Source.Series(first, second, headroom);
            }
        }
    }

    /// <summary>Pairs of alike d.c. outlets of one supply, at one voltage.</summary>
    private IEnumerable<Source> ParallelPairs() => singles.Select(source => source.Parts[0])
        .Where(part => part.Group.Count >= 2 && part.Setting.Limit is not null && part.Group.Rating.Form.Value == SupplyForm.Direct)
        .Select(part => Source.Parallel(part.Group, part.Setting, headroom));
}
