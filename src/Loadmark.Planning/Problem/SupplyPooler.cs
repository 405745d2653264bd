using System.Collections.Immutable;

namespace Loadmark.Planning.Problem;

/// <summary>
/// Takes supplies that are alike together as one with all their outlets and the sum of their totals, and leads that are alike
/// as one. What holds for each of them holds for the sum, so the pooled problem is an easier one, and a small one whatever the
/// size of the rig. Which supply feeds what, it does not say.
/// </summary>
internal static class SupplyPooler
{
    /// <summary>Pools a problem.</summary>
    public static PlanProblem Pool(PlanProblem problem)
    {
        var outlets = new List<OutletGroup>();
        var firsts = new Dictionary<string, int>(StringComparer.Ordinal);
        var counts = ImmutableDictionary.CreateBuilder<string, int>(StringComparer.Ordinal);
        var pooled = new HashSet<OutletGroup>();
        foreach (var alike in problem.AlikeSupplies)
        {
            firsts.Add(alike[0][0].Rating.Supply.Id, alike.Length);
            pooled.UnionWith(alike.SelectMany(static groups => groups));
            for (var place = 0; place < alike[0].Length; place++)
            {
                outlets.Add(OutletGroup.Pool(outlets.Count, [.. alike.Select(groups => groups[place])]));
                if (alike[0][place].SharedReturn is { } shared)
                    counts[shared] = alike.Length;
            }
        }

        var gone = pooled.Select(static group => group.Rating.Supply.Id).Where(id => !firsts.ContainsKey(id))
            .ToHashSet(StringComparer.Ordinal);
        foreach (var group in problem.Outlets.Where(group => !pooled.Contains(group)))
            outlets.Add(OutletGroup.Pool(outlets.Count, [group]));

        var headroom = problem.Pinned.Rig.HeadroomInForce;
        var singles = Source.All(outlets, headroom);
        var slots = new LeadSlotBuilder(
            problem.Pinned, outlets, new FeedClassBuilder(singles, headroom), problem.Loads.Sum(static load => load.Count), isPooled: true,
            problem.Homes);
        slots.Build();
        return problem with
        {
            Outlets = [.. outlets],
            Singles = singles,
            Slots = [.. slots.Slots],
            SlotLeads = [.. slots.SlotLeads],
            Totals = [.. problem.Totals.Where(total => !gone.Contains(total.Supply))
                .Select(total => total.Times(firsts.GetValueOrDefault(total.Supply, 1)))],
            AlikeSupplies = [],
            ReturnCounts = counts.ToImmutable(),
            IsPooled = true,
        };
    }
}
