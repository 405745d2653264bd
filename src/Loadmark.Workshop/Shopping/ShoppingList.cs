using Loadmark.Core.Display;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;

namespace Loadmark.Workshop.Shopping;

/// <summary>
/// What has to be bought to build a rig: supplies and leads that its file marks as yet to be bought, and the plain leads of the wiring that
/// it does not list. All other gear counts as there.
/// </summary>
public sealed record ShoppingList
{
    /// <summary>Everything that is to be bought, supplies first.</summary>
    public required ValueList<ShoppingThing> Things { get; init; }

    /// <summary>
    /// The leads of the wiring that are among <see cref="Things"/>, in the order of the lead list: what can be made instead.
    /// </summary>
    public required ValueList<ListedLead> ToMake { get; init; }

    /// <summary>Whether there was a price list.</summary>
    public required bool HasPrices { get; init; }

    /// <summary>How many things have no price; things that are wanted several times count as often.</summary>
    public int Unpriced => Things.Items.Sum(static thing => thing.Count - thing.Priced);

    /// <summary>What everything costs that has a price, in the money of the list: the least that the rig costs.</summary>
    public decimal Cost => Things.Items.Sum(static thing => thing.Cost ?? 0);

    /// <summary>What it costs as a sentence, which never hides what has no price.</summary>
    public string CostSentence => (Unpriced, Things.Items.Any(static thing => thing.Priced > 0)) switch
    {
        (0, _) => $"In all {FigureDisplay.Price(Cost)}.",
        (_, false) => "Nothing of it has a price in the list.",
        (1, _) => $"At least {FigureDisplay.Price(Cost)}: 1 thing has no price in the list.",
        _ => $"At least {FigureDisplay.Price(Cost)}: {Unpriced} things have no price in the list.",
    };

    /// <summary>Lists what is to be bought.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="leads">The leads that its wiring takes.</param>
    /// <param name="offers">The price list; null where there is none.</param>
    public static ShoppingList Of(Rig rig, ValueList<ListedLead> leads, ValueList<Offer>? offers)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var book = offers is { } list ? new PriceBook(list) : null;
        var used = leads.Items.Where(static lead => lead.Lead is not null).CountBy(static lead => lead.Lead!.Id).ToDictionary();
        return new ShoppingList
        {
            Things =
            [
                .. rig.Supplies.Items.Where(static supply => supply.ToBuy).Select(supply => ThingOf(supply, book)),
                .. rig.Leads.Items.Where(static lead => lead.ToBuy)
                    .Select(lead => ThingOf(lead, CountOf(lead, used.GetValueOrDefault(lead.Id)), book))
                    .Where(static thing => thing.Count > 0),
                .. leads.Items.Where(static lead => lead.Lead is null)
                    .GroupBy(static lead => (lead.Feed.Outlets.Length, Ends: string.Join(' ', ThingFacts.Of([lead]).First())))
                    .Select(static alike => PlainOf([.. alike])),
            ],
            ToMake = [.. leads.Items.Where(static lead => lead.Lead is null or { ToBuy: true })],
            HasPrices = book is not null,
        };
    }

    /// <summary>How many of a lead to buy: as the rig says; of a straight one without a number, as many as are used.</summary>
    private static int CountOf(Lead lead, int used) => lead.Count ?? (lead.Type == LeadType.Straight ? used : 1);

    private static ShoppingThing ThingOf(Supply supply, PriceBook? book)
    {
        string? remark = null;
        var thing = new ShoppingThing { Name = supply.Id, Facts = [.. ThingFacts.Of(supply)], Count = 1 };
        return Priced(thing, book?.Find(supply, out remark), remark, book);
    }

    private static ShoppingThing ThingOf(Lead lead, int count, PriceBook? book)
    {
        string? remark = null;
        var thing = new ShoppingThing { Name = lead.Id, Facts = [.. ThingFacts.Of(lead)], Count = count };
        return Priced(thing, book?.Find(lead, out remark), remark, book);
    }

    /// <summary>
    /// Plain leads have no price: the rig says neither how long they are nor which ones of a list they are, and any that was chosen for it
    /// would be a guess.
    /// </summary>
    private static ShoppingThing PlainOf(ListedLead[] alike) => new()
    {
        Name = alike[0].Feed.Outlets.Length == 1
            ? LeadNames.Of(LeadType.Straight)
            : $"lead that joins {alike[0].Feed.Outlets.Length} outlets",
        Facts = [.. ThingFacts.Of(alike)],
        Count = alike.Length,
        Remark = "the rig does not list it",
    };

    private static ShoppingThing Priced(ShoppingThing thing, PricedOffer? line, string? remark, PriceBook? book)
    {
        if (line is null)
            return thing with { Remark = remark };
        var priced = book!.Take(line.Offer, thing.Count);
        return thing with
        {
            Line = line,
            Priced = priced,
            Remark = priced == thing.Count ? null : $"the list has {priced} of {thing.Count}",
        };
    }
}
