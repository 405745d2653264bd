using Loadmark.Workshop.Shopping;

namespace Loadmark.Workshop.Sheets;

/// <summary>What is listed for a sheet besides its figures, once for all pages that show it.</summary>
/// <param name="Cuts">How the cable of all leads is cut.</param>
/// <param name="Shopping">What is to be bought.</param>
/// <param name="ShoppingCuts">How the cable of the leads that are to be bought or made is cut.</param>
internal sealed record SheetLists(IReadOnlyList<CutList> Cuts, ShoppingList Shopping, IReadOnlyList<CutList> ShoppingCuts)
{
    /// <summary>Makes the lists that a sheet needs.</summary>
    /// <param name="figures">What was computed.</param>
    /// <param name="options">How the sheet is made.</param>
    /// <param name="isShown">Whether a part is on the sheet.</param>
    /// <param name="cancellation">Stops it; what was found so far is told.</param>
    public static SheetLists Of(SheetFigures figures, SheetOptions options, Func<SheetPart, bool> isShown, CancellationToken cancellation)
    {
        var shopping = ShoppingList.Of(figures.Rig, figures.Leads, options.Prices);
        return new SheetLists(
            isShown(SheetPart.Leads) ? CutList.Of(figures.Leads, options.Cutting, cancellation) : [],
            shopping,
            isShown(SheetPart.Shopping) ? CutList.Of(shopping.ToMake, options.Cutting, cancellation) : []);
    }
}
