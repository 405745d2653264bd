using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decomposition;

/// <summary>Lists what could feed what, and which leads could be of use to what.</summary>
internal static class FeedCandidates
{
    /// <summary>
    /// Each load with each group of outlets that one of it could be fed from, alone or with others, over any lead on hand.
    /// </summary>
    public static IEnumerable<(LoadGroup Load, OutletGroup Outlets)> Pairs(PlanProblem problem)
    {
        LeadEnds[] ends = [LeadEnds.Plain, .. problem.SingleLeads.Select(static lead => lead.Ends)];
        foreach (var load in problem.Loads)
        {
            foreach (var source in problem.Singles)
            {
                if (ends.Any(end => source.CostOf(load, end) is not null))
                    yield return (load, source.Group);
            }
        }

        foreach (var slot in problem.Slots.DistinctBy(static slot => slot.Kind))
        {
            foreach (var from in slot.Classes)
            {
                var suiting = Suiting(problem, slot, from);
                if (suiting.Sum(static load => load.Count) < slot.Least)
                    continue;
                foreach (var load in suiting)
                {
                    foreach (var leg in from.Legs)
                    {
                        for (var place = 0; place < leg.Parts.Length; place++)
                        {
                            if (leg.Limits[place]?.Bears(load, from.Volts) is not false)
                                yield return (load, leg.Parts[place].Group);
                        }
                    }
                }
            }
        }
    }

    /// <summary>Each kind of leads on hand other than plain ones, with what it could be of use to.</summary>
    public static IEnumerable<LeadUse> Leads(PlanProblem problem)
    {
        foreach (var lead in problem.SingleLeads)
        {
            List<LoadGroup> suiting =
                [.. problem.Loads.Where(load => problem.Singles.Any(source => source.CostOf(load, lead.Ends) is not null))];
            yield return new LeadUse(lead.Ids, 1, [suiting]);
        }

        foreach (var slot in problem.Slots.DistinctBy(static slot => slot.Kind))
            yield return new LeadUse(
                problem.SlotLeads[slot.Kind], slot.Least, [.. slot.Classes.Select(from => Suiting(problem, slot, from))]);
    }

    /// <summary>
    /// The loads that may be on a lead from a class of outlets; where only several are worth it, those that bear company.
    /// </summary>
    private static List<LoadGroup> Suiting(PlanProblem problem, LeadSlot slot, FeedClass from) =>
    [
        .. problem.Loads.Where(load => from.CostOf(load, slot.Ends) is not null && (slot.Least == 1 || load.IsDrawKnown)
            && from.Legs.All(leg => leg.Limits.Any(limit => limit?.Bears(load, from.Volts) is not false))),
    ];
}
