using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Search;

/// <summary>
/// A problem told more and more finely: with loads of similar draw merged and all that is alike pooled, which makes it an easier one, up to
/// the problem as it is.
/// </summary>
internal sealed class Coarsening(PlanProblem problem)
{
    /// <summary>How far apart merged draws may be, from coarse to fine.</summary>
    private static readonly decimal[] Ratios = [1_000_000m, 1.5m, 1.1m, 1];

    /// <summary>Merging is worth it only where it leaves less than this share of the groups.</summary>
    private const double WorthMerging = 0.85;

    private readonly bool _isPooled = problem.AlikeSupplies.Length > 0 || problem.SlotLeads.Any(static leads => leads.Length > 1);
    private readonly Dictionary<Granularity, PlanProblem> _merged = [];
    private readonly Dictionary<PlanProblem, PlanProblem> _pooled = new(ReferenceEqualityComparer.Instance);
    private LoadMerger? _merger;

    /// <summary>Every draw told apart, and only what is alike pooled: the most that a relaxation can say.</summary>
    public PlanProblem Finest => _isPooled ? Pool(problem) : problem;

    /// <summary>The problem that is the quickest to ask.</summary>
    /// <param name="byPriority">Whether loads of different priority are told apart.</param>
    public PlanProblem Coarsest(bool byPriority)
    {
        var merged = Merge(Ratios[0], byPriority);
        return _isPooled ? Pool(merged) : IsWorthMerging(merged) ? merged : problem;
    }

    /// <summary>All of them, the coarsest first. Of a large one only what is pooled is small enough to say anything in time.</summary>
    /// <param name="isLarge">Whether it is large.</param>
    /// <param name="byPriority">Asked at each: whether loads of different priority are told apart.</param>
    public IEnumerable<PlanProblem> FromCoarseToFine(bool isLarge, Func<bool> byPriority)
    {
        foreach (var ratio in Ratios)
        {
            var merged = ratio == 1 ? problem : Merge(ratio, byPriority());
            if (ratio != 1 && !IsWorthMerging(merged))
                continue;
            if (_isPooled && (isLarge || ratio == Ratios[0]))
                yield return Pool(merged);
            if (!_isPooled || !isLarge)
                yield return merged;
        }
    }

    private bool IsWorthMerging(PlanProblem merged) => merged.Loads.Length <= WorthMerging * problem.Loads.Length;

    private PlanProblem Merge(decimal ratio, bool byPriority)
    {
        var granularity = new Granularity(ratio, byPriority);
        if (!_merged.TryGetValue(granularity, out var merged))
            _merged.Add(granularity, merged = (_merger ??= new LoadMerger(problem)).Merge(granularity));
        return merged;
    }

    private PlanProblem Pool(PlanProblem merged)
    {
        if (!_pooled.TryGetValue(merged, out var pooled))
            _pooled.Add(merged, pooled = SupplyPooler.Pool(merged));
        return pooled;
    }
}
