using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shape of problems.</summary>
internal static class ProblemShapes
{
    /// <summary>Adds it.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("Problem", Object(
            "A refusal, as RFC 9457 (Problem Details for HTTP APIs) tells it.",
            ("type", Text("Its kind; the address explains it.")),
            ("title", Text("Its kind in words.")),
            ("status", Count("The HTTP status.")),
            ("detail", Text("What is wrong this time.")),
            ("id", Text("The request's id: whoever looks into it finds the request in the log by it.")),
            ("errors?", List("What keeps the rig, or the gear, from being read.", book.Of("FileError"))),
            ("priceErrors?", List("What keeps the price list from being read.", book.Of("FileError"))),
            ("present?", book.Of("KeptRig")),
            ("presentGear?", book.Of("GearShown"))));
    }
}
