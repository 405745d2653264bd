using Loadmark.Core.Display;
using Loadmark.Core.Offers;
using Loadmark.Planning.Buying;
using Loadmark.Planning.Explaining;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>The answer to what should be bought as JSON. The price has no unit: it is in the money of the price list.</summary>
internal static class BuyJson
{
    private const decimal GramsInKilogram = 1000m;

    private static JsonShape<Purchase> Purchase { get; } = new JsonShape<Purchase>("Purchase", "A supply to buy.")
        .Text("supply", static purchase => purchase.Offer.Id, "Its id in the list.")
        .Count("count", static purchase => purchase.Count, "How many.")
        .Figure("price", static purchase => purchase.Offer.Price, "What one costs.")
        .Figure(
            "massKilograms", static purchase => purchase.Offer.MassGrams / GramsInKilogram,
            "What one weighs, kg; null where the list does not say.", Presence.OrNull);

    private static JsonShape<Purchase> Lead { get; } = new JsonShape<Purchase>("LeadPurchase", "A lead to buy.")
        .Text("lead", static purchase => purchase.Offer.Id, "Its id in the list.")
        .Text("type", static purchase => LeadNames.Of(((LeadOffer)purchase.Offer).Lead.Type), "What sort of lead it is.")
        .Count("count", static purchase => purchase.Count, "How many.")
        .Figure("price", static purchase => purchase.Offer.Price, "What one costs.")
        .Figure(
            "massKilograms", static purchase => purchase.Offer.MassGrams / GramsInKilogram,
            "What one weighs, kg; null where the list does not say.", Presence.OrNull);

    private static JsonShape<BuyOption> Option { get; } = new JsonShape<BuyOption>("PurchaseOption", "One way to buy.")
        .List("buy", static option => option.Supplies, Purchase, "Which supplies to buy.")
        .List(
            "leads", static option => option.Leads.Count > 0 ? option.Leads.Items : null, Lead, "Which leads to buy; absent where none is.",
            Presence.OrAbsent)
        .Figure("price", static option => option.Price, "What it costs, in the money of the list.")
        .Figure(
            "massKilograms", static option => option.MassGrams / GramsInKilogram, "What it weighs, kg; null where the list does not say.",
            Presence.OrNull)
        .Figure("spareWatts", static option => option.Spare.Value, "What is left to give, W.")
        .Count("boxes", static option => option.Count, "How many supplies that is.")
        .Word("verdict", static option => JsonWords.Of(option.Verdict), JsonWords.Severities, "What the rules say of the rig with it.")
        .Flag(
            "quiet", static option => option.IsQuiet,
            "Whether everything is fed and the rules find no noise in it; the verdict says what else they find.")
        .Texts("mayBeUnregulated", static option => option.MayBeUnregulated, "What of it is unregulated, or may be.")
        .Value("plan", static option => new ExplainedPlan(option.Plan, PlanExplanation.None, []), PlanJson.Plan);

    private static JsonShape<OfferLeftOut> LeftOut { get; } = new JsonShape<OfferLeftOut>(
            "SupplyLeftOut", "A supply or lead that was not looked at.")
        .Text("supply", static left => left.Offer.Id, "Its id in the list.")
        .Text("because", static left => left.Because, "Why.");

    /// <summary>What should be bought.</summary>
    public static JsonShape<BuyResult> Purchases { get; } = new JsonShape<BuyResult>("Purchases", "Which supplies to buy.")
        .Text("rig", static result => result.Rig.Name, "The rig's name.")
        .Word(
            "status", static result => result.Status, JsonWords.Of,
            "Proven cheapest, as far as the list tells; feeds all, but not proven cheapest; "
            + "proven that nothing on the list does, as far as it tells; nothing found.")
        .Figure("priceBound", static result => result.PriceBound, "What nothing that feeds all costs less than, in the money of the list.")
        .List(
            "options", static result => result.Options.Items, Option,
            "What to choose from, the cheapest first, the cheapest that is quiet among it.")
        .Word(
            "quietStatus", static result => result.QuietStatus, JsonWords.Of,
            "What is known of the first option that is quiet: proven the cheapest that is; one, but not proven the cheapest; "
            + "proven that none is; none found.")
        .Figure(
            "quietPriceBound", static result => result.QuietPriceBound,
            "What nothing that feeds all and is quiet costs less than, as far as it is proven, in the money of the list.")
        .Flag("optionsComplete", static result => result.IsFrontComplete, "Whether every option that is worth its price is there.")
        .Texts("room", static result => result.ReservedLoads, "Loads that room is kept for.")
        .Texts("unsuited", static result => result.Unsuited, "Loads that nothing on the list could feed.")
        .Texts("needLeads", static result => result.NeedLeads, "Loads that could be fed with other leads.")
        .List("leftOut", static result => result.LeftOut, LeftOut, "Supplies and leads of the list that were not looked at.");

    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, BuyResult result) => JsonFormat.WriteLine(output, Purchases, result);
}
