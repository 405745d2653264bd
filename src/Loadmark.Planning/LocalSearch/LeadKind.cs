using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>Leads that may be exchanged for one another.</summary>
/// <param name="Joined">How they join outlets.</param>
/// <param name="Ends">What they do to polarity and plug.</param>
/// <param name="Least">The fewest loads worth putting on one.</param>
/// <param name="Plugs">The most loads one has plugs for.</param>
/// <param name="Ids">The ids of the leads, one for each; null for plain ones, of which there are always enough.</param>
/// <param name="Slot">The kind of slot they are; null for leads with one plug.</param>
internal sealed record LeadKind(Joint Joined, LeadEnds Ends, int Least, int Plugs, ImmutableArray<string>? Ids, int? Slot)
{
    /// <summary>Whether the lead is another than a plain straight one.</summary>
    public bool IsSpecial => Ids is not null;

    /// <summary>How many there are.</summary>
    public int Count => Ids?.Length ?? int.MaxValue;

    /// <summary>All kinds of a problem: the plain one first.</summary>
    public static ImmutableArray<LeadKind> Of(PlanProblem problem)
    {
        var kinds = ImmutableArray.CreateBuilder<LeadKind>();
        kinds.Add(new LeadKind(Joint.None, LeadEnds.Plain, 1, 1, null, null));
        foreach (var single in problem.SingleLeads)
            kinds.Add(new LeadKind(Joint.None, single.Ends, 1, 1, single.Ids, null));
        foreach (var slot in problem.Slots.DistinctBy(static slot => slot.Kind))
            kinds.Add(new LeadKind(slot.Classes[0].Joined, slot.Ends, slot.Least, slot.Plugs, problem.SlotLeads[slot.Kind], slot.Kind));
        return kinds.ToImmutable();
    }
}
