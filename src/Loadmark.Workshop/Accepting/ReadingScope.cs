using Loadmark.Core.Acceptance;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Accepting;

/// <summary>
/// What of a rig a reading depends on: where none of it has changed the reading still holds. Figures that were measured (draws, no-load
/// voltages, source resistances) are told of things and change none of them.
/// </summary>
internal sealed class ReadingScope
{
    private readonly Rig _rig;
    private readonly ValueList<Feed> _wired;

    /// <summary>Has a rig looked up.</summary>
    public ReadingScope(Rig rig)
    {
        _rig = rig.WithoutLibrary();
        _wired = _rig.Wired ?? [];
    }

    /// <summary>What a reading depends on: a part of the rig that is equal where all of it is.</summary>
    /// <param name="plug">The plug.</param>
    /// <param name="measure">What was measured there.</param>
    public Rig Of(PlugPlace plug, BenchMeasure measure)
    {
        var feed = plug.Lead.Feed.Feed;
        var part = measure == BenchMeasure.Open ? [feed] : Together(feed);
        var whole = WithUpstream(part);
        var outlets = whole.SelectMany(static one => one.From.Items).ToHashSet();
        var names = outlets.Select(static outlet => outlet.Supply).ToHashSet(StringComparer.Ordinal);
        var loads = measure == BenchMeasure.Open ? [] : whole.SelectMany(static one => one.To.Items).ToHashSet(StringComparer.Ordinal);
        var leads = whole.Select(static one => one.Lead).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return new Rig
        {
            Name = $"{plug.Name} {measure} {plug.Load.Id}",
            Mains = _rig.Mains,
            Supplies = [.. _rig.Supplies.Items.Where(supply => names.Contains(supply.Id)).Select(supply => Plain(supply, outlets))],
            Loads = [.. _rig.Loads.Items.Where(load => loads.Contains(load.Id)).Select(Plain)],
            Leads = [.. _rig.Leads.Items.Where(lead => leads.Contains(lead.Id)).Select(static lead => lead with { ToBuy = false })],
            Wired = [.. whole.Select(static one => one with { Pinned = false })],
        };
    }

    /// <summary>A supply with the outlets that are used, and without what only tells of it.</summary>
    private static Supply Plain(Supply supply, HashSet<OutletRef> used) => supply with
    {
        Name = null,
        Board = null,
        ToBuy = false,
        Outlets =
        [
            .. supply.Outlets.Items.Where(outlet => used.Contains(new OutletRef(supply.Id, outlet.Id)))
                .Select(static outlet => outlet with { NoLoad = null, SourceOhms = null }),
        ],
    };

    private static Load Plain(Load load) => load with { Name = null, Board = null, Priority = null, Run = null, Start = null };

    /// <summary>The feeds that pull on the same supplies, in the order of the wiring.</summary>
    private List<Feed> Together(Feed feed)
    {
        var supplies = feed.From.Items.Select(static outlet => outlet.Supply).ToHashSet(StringComparer.Ordinal);
        bool grows;
        do
        {
            grows = false;
            foreach (var other in _wired)
            {
                if (!other.From.Items.Any(outlet => supplies.Contains(outlet.Supply)))
                    continue;
                foreach (var outlet in other.From)
                    grows |= supplies.Add(outlet.Supply);
            }
        }
        while (grows);
        return [.. _wired.Items.Where(other => other.From.Items.Any(outlet => supplies.Contains(outlet.Supply)))];
    }

    /// <summary>The feeds with those that their supplies are fed by themselves.</summary>
    private List<Feed> WithUpstream(List<Feed> feeds)
    {
        var found = new HashSet<Feed>(feeds, ReferenceEqualityComparer.Instance);
        for (var queue = new Queue<Feed>(feeds); queue.TryDequeue(out var feed);)
        {
            foreach (var upstream in _wired.Items.Where(other => feed.From.Items.Any(outlet => other.To.Items.Contains(outlet.Supply))))
            {
                if (found.Add(upstream))
                    queue.Enqueue(upstream);
            }
        }

        return [.. _wired.Items.Where(found.Contains)];
    }
}
