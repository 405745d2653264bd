using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of what is asked about plans and purchases.</summary>
internal static class PlanShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book) => book.Add("RigAndPrices", Object(
        "A rig and a price list.",
        ("rig", Text("The rig file's text.")),
        ("prices", Text("The price list's text: CSV, one supply a line (docs/price-list.md)."))));
}
