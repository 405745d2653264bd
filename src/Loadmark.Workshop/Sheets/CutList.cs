using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Cutting;

namespace Loadmark.Workshop.Sheets;

/// <summary>How the cable of one size of wire is cut from the reels for all leads of a rig that are made of it.</summary>
/// <param name="Wire">The size of wire.</param>
/// <param name="Cut">What is cut from which reel.</param>
/// <param name="Naive">The same without planning: each piece as it comes from the first reel that has enough.</param>
public sealed record CutList(Wire Wire, CuttingResult Cut, CuttingResult Naive)
{
    /// <summary>
    /// How much work a size of wire is worth, in the solver's own steps: what forty leads take is a tenth of it. What is not proven by then
    /// is said not to be.
    /// </summary>
    private const double Work = 0.3;

    /// <summary>Plans the cutting, a list for each size of wire in the order in which the leads have it.</summary>
    /// <param name="leads">The leads. Those of which the rig gives ohms instead of a length are left out.</param>
    /// <param name="wishes">From what they are cut.</param>
    /// <param name="cancellation">Stops it; what was found so far is told.</param>
    public static IReadOnlyList<CutList> Of(ValueList<ListedLead> leads, CuttingWishes wishes, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(wishes);
        if (wishes.Reels.Count == 0)
            return [];
        var options = new CuttingOptions { CutLoss = wishes.CutLoss, WorkLimit = Work };
        return
        [
            .. leads.Items.Where(static lead => lead is { Wire: not null, Stretches.Count: > 0 }).GroupBy(static lead => lead.Wire!.Value)
                .Select(group =>
                {
                    CutPiece[] pieces = [.. group.SelectMany(lead => PiecesOf(lead, wishes.Allowance))];
                    return new CutList(
                        group.Key,
                        CuttingPlanner.Plan(pieces, wishes.Reels, options, cancellation),
                        FirstFitCutting.InOrder(pieces, wishes.Reels, options));
                }),
        ];
    }

    private static IEnumerable<CutPiece> PiecesOf(ListedLead lead, Metres allowance)
    {
        for (var stretch = 0; stretch < lead.Stretches.Count; stretch++)
            yield return new CutPiece(
                lead.Stretches.Count == 1 ? $"lead {lead.Number}" : $"lead {lead.Number}, part {stretch + 1}",
                lead.Stretches[stretch] + allowance);
    }
}
