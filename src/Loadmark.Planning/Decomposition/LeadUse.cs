using System.Collections.Immutable;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Decomposition;

/// <summary>Leads on hand that are alike, and what they could be of use to.</summary>
/// <param name="Ids">The ids of the leads, one for each.</param>
/// <param name="Least">The fewest loads worth putting on one.</param>
/// <param name="Suiting">Loads that could be on such a lead together; a list for each class of outlets.</param>
internal sealed record LeadUse(ImmutableArray<string> Ids, int Least, IReadOnlyList<IReadOnlyList<LoadGroup>> Suiting)
{
    /// <summary>How many of these leads some loads could use at the most; more are of no use there.</summary>
    /// <param name="isThere">Which loads.</param>
    /// <param name="outlets">How many outlets there are.</param>
    public int MostFor(Func<LoadGroup, bool> isThere, int outlets)
    {
        var loads = Suiting.Select(together => together.Where(isThere).ToList())
            .Where(there => there.Sum(static load => load.Count) >= Least).SelectMany(static there => there).Distinct();
        return Math.Min(loads.Sum(static load => load.Count) / Least, outlets);
    }
}
