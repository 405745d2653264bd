using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Model;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decoding;

/// <summary>
/// Finds the feeds and their leads behind the counts of a solution, and has their loads and outlets named; an instance serves once.
/// </summary>
internal sealed class FeedDecoder
{
    private readonly PlanProblem _problem;
    private readonly WiringModel _model;
    private readonly Queue<string>[] _slotLeads;
    private readonly Queue<string>[] _singleLeads;

    /// <summary>Prepares to read a model's values as feeds.</summary>
    public FeedDecoder(PlanProblem problem, WiringModel model)
    {
        _problem = problem;
        _model = model;
        _slotLeads = [.. problem.SlotLeads.Select(static leads => new Queue<string>(leads))];
        _singleLeads = [.. problem.SingleLeads.Select(static lead => new Queue<string>(lead.Ids))];
    }

    /// <summary>All feeds, the pinned ones too, in the order of the supplies and their outlets.</summary>
    public ValueList<Feed> Decode(long[] values) => new FeedNamer(_problem).Name([.. Singles(values), .. Slots(values)]);

    private IEnumerable<PlannedFeed> Singles(long[] values)
    {
        foreach (var single in _model.Singles)
        {
            for (var left = values[single.Count.Index]; left > 0; left--)
            {
                var lead = single.Lead is { } kind ? _singleLeads[kind.Index].Dequeue() : null;
                yield return new PlannedFeed(Joint.None, single.Source.Volts, [single.Source.Part], lead, [single.Load]);
            }
        }
    }

    private IEnumerable<PlannedFeed> Slots(long[] values)
    {
        foreach (var slot in _model.Slots.Where(slot => values[slot.Used.Index] > 0))
        {
            var groups = slot.Loads.SelectMany(load => Enumerable.Repeat(load.Load, (int)values[load.Count.Index])).ToList();
            yield return new PlannedFeed(
                slot.Class.Joined, slot.Class.Volts, Parts(slot, values), _slotLeads[slot.Slot.Kind].Dequeue(), groups);
        }
    }

    private static ImmutableArray<SourcePart> Parts(SlotChoice slot, long[] values)
    {
        var parts = slot.Legs.ConvertAll(leg => leg.Leg.Parts[leg.Uses.FindIndex(use => values[use.Index] > 0)]);
        return slot.Class.Joined == Joint.Parallel ? [parts[0], parts[0]] : [.. parts];
    }
}
