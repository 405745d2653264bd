using Loadmark.Core.Fits;

namespace Loadmark.Planning.Problem;

/// <summary>What counts in the objective when a load is fed from somewhere, whatever else is fed from there.</summary>
/// <param name="Margins">Findings of margin on voltage and plug.</param>
/// <param name="Doubts">1 where it is not known that the place suits the load, or the voltage is well under what it is made for; else
/// 0.</param>
internal readonly record struct LoadCost(int Margins, int Doubts)
{
    /// <summary>What a judgement of fit comes to; null where the load must not be fed from there.</summary>
    /// <param name="fit">The judgement.</param>
    /// <param name="mustBeCertain">Whether it must be known to suit.</param>
    public static LoadCost? Of(Suitability fit, bool mustBeCertain) =>
        fit.Answer == Fit.No || (mustBeCertain && fit.IsDoubtful) ? null : Of(fit);

    /// <summary>What a judgement of fit comes to, even where the load must not be fed from there: a pinned feed may be so.</summary>
    public static LoadCost Of(Suitability fit) => new(fit.Margins, fit.IsDoubtful ? 1 : 0);
}
