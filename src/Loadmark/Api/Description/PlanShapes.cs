using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of plans and purchases.</summary>
internal static class PlanShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("Plan", Object(
            "What should feed what.",
            ("status", Word("Proven best; feeds all, but not proven best; proven that not all can be fed; neither.", "optimal", "feasible", "infeasible", "unknown")),
            ("feeds", List("The wiring.", book.Of("PlannedFeed"))),
            ("unfed", Texts("Loads that stay dark.")),
            ("reasons", List("Demands that cannot hold together.", book.Of("Reason"))),
            ("changes", Texts("The smallest changes that would mend it.")),
            ("objective", List("What the wiring was chosen by, each level before the next.", book.Of("ObjectiveLevel")))));
        book.Add("PlannedFeed", Object(
            "One feed.",
            ("from", Texts("The outlets, as supply/outlet.")),
            ("joined", Word("How several outlets are joined; null for one outlet.", "series", "parallel").OrNullWord()),
            ("volts", Number("The voltage that the outlets are set to, V; null where it is not known.").OrNull()),
            ("lead", Text("The lead; straight for a plain one.")),
            ("to", Texts("The loads."))));
        book.Add("Reason", Object("Demands that cannot hold together.", ("loads", Texts("The loads.")), ("because", Text("Why."))));
        book.Add("ObjectiveLevel", Object(
            "One level of what is looked for; less is better.",
            ("name", Text("What is counted.")),
            ("value", Number("What the wiring has.")),
            ("bound", Number("What no wiring is below."))));
        book.Add("RigAndPrices", Object(
            "A rig and a price list.",
            ("rig", Text("The rig file's text.")),
            ("prices", Text("The price list's text: CSV, one supply a line (docs/price-list.md)."))));
        book.Add("Purchases", Object(
            "Which supplies to buy.",
            ("rig", Text("The rig's name.")),
            ("status", Word("Proven cheapest, as far as the list tells; feeds all, but not proven cheapest; proven that nothing on the list does, as far as it tells; nothing found.", "optimal", "feasible", "infeasible", "unknown")),
            ("priceBound", Number("What nothing that feeds all costs less than, in the money of the list.")),
            ("options", List("What to choose from, the cheapest first.", book.Of("PurchaseOption"))),
            ("optionsComplete", Flag("Whether every option that is worth its price is there.")),
            ("room", Texts("Loads that room is kept for.")),
            ("unsuited", Texts("Loads that nothing on the list could feed.")),
            ("needLeads", Texts("Loads that could be fed with other leads.")),
            ("leftOut", List("Supplies of the list that were not looked at.", book.Of("SupplyLeftOut")))));
        book.Add("PurchaseOption", Object(
            "One way to buy.",
            ("buy", List("What to buy.", book.Of("Purchase"))),
            ("price", Number("What it costs, in the money of the list.")),
            ("massKilograms", Number("What it weighs, kg; null where the list does not say.").OrNull()),
            ("spareWatts", Number("What is left to give, W.")),
            ("plan", book.Of("Plan"))));
        book.Add("Purchase", Object(
            "A supply to buy.",
            ("supply", Text("Its id in the list.")),
            ("count", Count("How many.")),
            ("price", Number("What one costs.")),
            ("massKilograms", Number("What one weighs, kg; null where the list does not say.").OrNull())));
        book.Add("SupplyLeftOut", Object("A supply that was not looked at.", ("supply", Text("Its id in the list.")), ("because", Text("Why."))));
    }
}
