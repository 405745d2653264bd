using Microsoft.OpenApi;
using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of kept rigs, events, health and problems.</summary>
internal static class KeptShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("RigList", Object("The rigs that are kept.", ("rigs", List("The last changed first.", book.Of("RigSummary")))));
        book.Add("RigSummary", Object("A kept rig, without its text.", Head()));
        book.Add("KeptRig", Object(
            "A kept rig.",
            [
                .. Head(),
                ("text", Text("The rig file's text, to the letter as it was kept.")),
                ("undo", Text("What undoing would take back; null where there is nothing.").OrNull()),
                ("redo", Text("What redoing would bring back; null where there is nothing.").OrNull()),
            ]));
        book.Add("Progress", Object(
            "How far a computation has come. Beside the seconds: of a plan level, value and bound; of a purchase leastPrice, found and planned; of samples done and samples; of rigs that a change of gear means something to done and rigs.",
            ("seconds", Number("Time since it was asked for, s.")),
            ("level?", Text("What is being made least.")),
            ("value?", Number("What the best so far has.")),
            ("bound?", Number("What no wiring is below.")),
            ("leastPrice?", Number("What nothing that feeds all costs less than.")),
            ("found?", Count("Options found.")),
            ("planned?", Count("Options wired; null while they are looked for.").OrNull()),
            ("done?", Count("Samples computed, or rigs looked at.")),
            ("samples?", Count("Samples asked for.")),
            ("rigs?", Count("Rigs to look at."))));
        book.Add("Health", Object(
            "Whether the program and the store of rigs are well.",
            ("status", Word("All is well, or something is not.", "well", "ill")),
            ("version", Text("The program's version.")),
            ("uptimeSeconds", Number("How long it has been running, s.")),
            ("store", Object("The store of rigs.", ("isOpen", Flag("Whether rigs can be read and kept.")), ("trouble", Text("What is wrong and what to do; null where nothing is.").OrNull())))));
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

    private static (string, IOpenApiSchema)[] Head() =>
    [
        ("id", new OpenApiSchema { Type = JsonSchemaType.String, Format = "uuid", Description = "What it is known by." }),
        ("name", Text("Its name.")),
        ("revision", Count("Grows with every change; to be sent back in If-Match with the next one.")),
        ("changed", new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time", Description = "When it was changed last, UTC." }),
    ];
}
