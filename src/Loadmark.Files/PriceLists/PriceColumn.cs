using Loadmark.Files.Keys;

namespace Loadmark.Files.PriceLists;

/// <summary>The columns of a price list.</summary>
internal static class PriceColumn
{
    /// <summary>What is on a list is yet to be bought in any case.</summary>
    private const string ToBuy = "to_buy";

    /// <summary>The name of a supply; a line has this or <see cref="Lead"/>.</summary>
    public const string Supply = "supply";

    /// <summary>The price of one supply or lead; a list has to have this column.</summary>
    public const string Price = "price";

    /// <summary>What one weighs, in grams.</summary>
    public const string Mass = "mass_g";

    /// <summary>What is printed on the supply.</summary>
    public const string Label = "label";

    /// <summary>The supply's outlets with their labels.</summary>
    public const string Outlets = "outlets";

    /// <summary>The limit of all outlets together.</summary>
    public const string Total = "total";

    /// <summary>Whether each outlet has a return of its own.</summary>
    public const string Isolated = "isolated";

    /// <summary>The mains that the supply takes.</summary>
    public const string Mains = "mains";

    /// <summary>The name of a lead; a line has this or <see cref="Supply"/>.</summary>
    public const string Lead = "lead";

    /// <summary>How many loads a lead has plugs for; needed of a daisy chain.</summary>
    public const string Plugs = "plugs";

    /// <summary>The columns that say what a supply is.</summary>
    public static IReadOnlyList<string> OfSupply { get; } = [Label, Outlets, Total, Isolated, Mains];

    /// <summary>The columns that say what a lead is: what the rig file says of one, each read as it is there.</summary>
    public static IReadOnlyList<FieldKey<Core.Rigs.Lead>> OfLead { get; } =
        [.. LeadKeys.Table.Fields.Where(static field => field.Name != ToBuy)];

    /// <summary>All of them, in the order that the documentation gives them.</summary>
    public static IReadOnlyList<string> All { get; } =
        [Supply, Price, Mass, .. OfSupply, Lead, .. OfLead.Select(static field => field.Name)];
}
