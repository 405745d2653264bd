namespace Loadmark.Files.PriceLists;

/// <summary>The columns of a price list.</summary>
internal static class PriceColumn
{
    /// <summary>The supply's name; needed.</summary>
    public const string Supply = "supply";

    /// <summary>The price of one supply; a list has to have this column.</summary>
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

    /// <summary>All of them, in the order that the documentation gives them.</summary>
    public static IReadOnlyList<string> All { get; } = [Supply, Price, Mass, Label, Outlets, Total, Isolated, Mains];
}
