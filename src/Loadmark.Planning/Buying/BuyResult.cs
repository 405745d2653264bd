using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>Which supplies to buy, with what is proven about it.</summary>
public sealed record BuyResult
{
    /// <summary>What is known of the cheapest option.</summary>
    public required BuyStatus Status { get; init; }

    /// <summary>
    /// The options worth choosing between, the cheapest first: none costs more than the price ratio allows, none has a supply that
    /// could be left out, and each is, by at least a step, lighter or has more to spare than every one before it. Of combinations
    /// at one price the lighter one comes first. Empty when there is none.
    /// </summary>
    public required ValueList<BuyOption> Front { get; init; }

    /// <summary>Whether it is proven that the front holds every such option (of equal ones, one).</summary>
    public required bool IsFrontComplete { get; init; }

    /// <summary>What everything costs at the least, as far as it is proven; zero where nothing is.</summary>
    public required decimal PriceBound { get; init; }

    /// <summary>The loads that no offer, and no supply there is, can feed even alone; in the order of the rig.</summary>
    public required ValueList<string> Unsuited { get; init; }

    /// <summary>The loads that can be fed only over reversing, series or parallel leads; told where nothing feeds everything.</summary>
    public required ValueList<string> NeedLeads { get; init; }

    /// <summary>The offers that were not considered, in the order of the price list.</summary>
    public required ValueList<OfferLeftOut> LeftOut { get; init; }

    /// <summary>How often the planner was asked whether a combination feeds everything.</summary>
    public required int Checks { get; init; }

    /// <summary>The rig with the loads to come, before anything is bought.</summary>
    public required Rig Rig { get; init; }

    /// <summary>The tags of the loads to come.</summary>
    public required ValueList<string> ReservedLoads { get; init; }

    /// <summary>The cheapest option; null when there is none.</summary>
    public BuyOption? Cheapest => Front.Count == 0 ? null : Front[0];

    /// <summary>
    /// The cheapest option, of all combinations, in which the rules find no noise; null where none was found. It need not be in the front,
    /// and may be a combination of the front that is wired otherwise.
    /// </summary>
    public required BuyOption? CheapestQuiet { get; init; }

    /// <summary>What is known of it: that nothing cheaper is quiet, or that nothing is, or neither.</summary>
    public required BuyStatus QuietStatus { get; init; }

    /// <summary>What everything that is quiet costs at the least, as far as it is proven; zero where nothing is.</summary>
    public required decimal QuietPriceBound { get; init; }

    /// <summary>The front, and the cheapest option that is quiet where it is not in it; the cheapest first.</summary>
    public ValueList<BuyOption> Options => CheapestQuiet is not { } quiet || Front.Items.Contains(quiet)
        ? Front
        : [.. Front.Items.Append(quiet).OrderBy(static option => option.Price)];

    /// <summary>The option of the front with the fewest supplies to buy, of equal ones the cheapest; null when there is none.</summary>
    public BuyOption? FewestBoxes => Front.Items.MinBy(static option => option.Count);

    /// <summary>The lightest option of the front, of equal ones the cheapest; null when the mass of none is known.</summary>
    public BuyOption? Lightest => Front.Items.Where(static option => option.MassGrams is not null).MinBy(static option => option.MassGrams);
}
