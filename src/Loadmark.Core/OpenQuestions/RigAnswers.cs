using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>Puts answers into a rig.</summary>
internal static class RigAnswers
{
    /// <summary>The rig with some of its loads changed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="ids">The loads' tags; others than loads are passed over.</param>
    /// <param name="change">What becomes of each.</param>
    public static Rig WithLoads(this Rig rig, ValueList<string> ids, Func<Load, Load> change)
    {
        var meant = ids.Items.ToHashSet(StringComparer.Ordinal);
        return rig with { Loads = [.. rig.Loads.Items.Select(load => meant.Contains(load.Id) ? change(load) : load)] };
    }

    /// <summary>The rig with a supply changed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="id">The supply's id.</param>
    /// <param name="change">What becomes of it.</param>
    public static Rig WithSupply(this Rig rig, string id, Func<Supply, Supply> change) =>
        rig with { Supplies = [.. rig.Supplies.Items.Select(supply => supply.Id == id ? change(supply) : supply)] };

    /// <summary>The rig with some of its outlets changed.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="names">The outlets' names, such as <c>brick/5</c>; others than outlets are passed over.</param>
    /// <param name="change">What becomes of each.</param>
    public static Rig WithOutlets(this Rig rig, ValueList<string> names, Func<Outlet, Outlet> change)
    {
        var meant = names.Items.ToHashSet(StringComparer.Ordinal);
        return rig with
        {
            Supplies =
            [
                .. rig.Supplies.Items.Select(supply => supply with
                {
                    Outlets = [.. supply.Outlets.Items
                        .Select(outlet => meant.Contains($"{supply.Id}/{outlet.Id}") ? change(outlet) : outlet)],
                }),
            ],
        };
    }
}
