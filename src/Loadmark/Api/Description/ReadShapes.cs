using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of nameplates that are read.</summary>
internal static class ReadShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("TextsToRead", Object("Labels to read.", ("texts", Texts("What is printed, as it stands; one label each."))));
        book.Add("Readings", List("One reading for each text, in the order given.", book.Of("Reading")));
        book.Add("Reading", Object(
            "What a nameplate says.",
            ("supply", Word("Direct or alternating; null where it is not said.", "dc", "ac").OrNullWord()),
            ("modes", List("Settings: one where the label tells one.", book.Of("Mode"))),
            ("polarity", Word("The polarity of the plug; null where it is not said.", "centre-negative", "centre-positive").OrNullWord()),
            ("plug", Text("The plug, outer by inner diameter in mm, such as 5.5x2.1; null where it is not said.").OrNull()),
            ("mains", book.OfOrNull("MainsInput")),
            ("input", book.OfOrNull("LowVoltageInput")),
            ("outlets", List("The outlets that the label tells apart; null where it speaks of one output.", book.Of("PrintedOutlets")).OrNull()),
            ("total", book.OfOrNull("PrintedTotal")),
            ("derived", Texts("Which figures are computed from others, not printed.")),
            ("conflicts", Texts("Where the label contradicts itself.")),
            ("unread", Texts("What was not understood.")),
            ("ground", Word("The side that is joined to ground; null where it is not said.", "negative", "positive").OrNullWord()),
            ("isolated", Flag("Whether the outputs are isolated from one another; null where it is not said.").OrNull()),
            ("eachOutlet", Flag("Whether the figures are said to be of each of several outlets, without their number.")),
            ("notUnderstood", List("Of what words or drawings stand on the label that were not understood.", Word("A topic.", "supply", "polarity", "ground", "plug", "regulation"))),
            ("fields", Object(
                "How the reading of each field went.",
                ("supply", book.Of("WordField")), ("volts", book.Of("FigureField")), ("amps", book.Of("FigureField")), ("watts", book.Of("FigureField")),
                ("polarity", book.Of("WordField")), ("plug", book.Of("WordField")), ("ground", book.Of("WordField")),
                ("input", book.Of("WordField")), ("mains", book.Of("WordField")))),
            ("unreadAt", List("Where what was not understood stands.", Place(orNull: false)))));
        book.Add("Mode", Object(
            "One setting: a voltage with the current there.",
            ("volts", Range("The voltage from and to, V; null where it is not known.")),
            ("amps", Number("The current, A; null where it is not known.").OrNull()),
            ("watts", Number("The power, W; null where it is not known, as of alternating current.").OrNull()),
            ("voltAmps?", Number("The apparent power, VA, where it is printed, or V·A of alternating current.")),
            ("ampsFrom?", Number("The lower end where a range of currents is printed, A.")),
            ("hertz?", Range("The frequency from and to, Hz, where it is alternating."))));
        book.Add("LowVoltageInput", Object(
            "The low-voltage side that goes in, of a thing that puts out a low voltage as well.",
            ("volts", Range("The voltage from and to, V; null where it is not said.")),
            ("amps", Number("The highest current, A; null where it is not said.").OrNull()),
            ("watts?", Number("The power, W, where it is printed.")),
            ("voltAmps?", Number("The apparent power, VA, where it is printed.")),
            ("supply?", Word("Direct or alternating, where it is printed.", "dc", "ac"))));
        book.Add("PrintedOutlets", Object(
            "Outlets that the label tells apart.",
            ("ids", Text("Their ids, such as 2-5 or 1,3; null where just their number is printed.").OrNull()),
            ("count", Count("How many outlets there are.")),
            ("modes", List("The settings of each.", book.Of("Mode"))),
            ("supply?", Word("Direct or alternating, where it is printed for them alone.", "dc", "ac")),
            ("polarity?", Word("The polarity, where it is printed for them alone.", "centre-negative", "centre-positive")),
            ("isolated?", Flag("Whether each has a return of its own, where it is printed for them alone."))));
        book.Add("PrintedTotal", Object(
            "What all outputs together can give.",
            ("amps?", Number("In A, where it is printed so.")),
            ("watts?", Number("In W, where it is printed so."))));
        book.Add("MainsInput", Object(
            "The mains side.",
            ("volts", Range("The voltage from and to, V.")),
            ("hertz", Range("The frequency from and to, Hz; null where it is not said.")),
            ("amps", Number("The current, A; null where it is not said.").OrNull()),
            ("watts?", Number("The power, W, where it is printed.")),
            ("voltAmps?", Number("The apparent power, VA, where it is printed."))));
        book.Add("WordField", Field(Text("A word that it may be.")));
        book.Add("FigureField", Field(Number("A figure that it may be, in V, A or W.")));
    }

    private static Microsoft.OpenApi.OpenApiSchema Field(Microsoft.OpenApi.OpenApiSchema candidate) => Object(
        "How the reading of a field went.",
        ("state", Word("How it went.", "absent", "read", "ambiguous", "unreadable")),
        ("at", Place(orNull: true)),
        ("candidates", List("What it may be where that is not clear.", candidate)));

    private static Microsoft.OpenApi.OpenApiSchema Place(bool orNull)
    {
        var place = Tuple("Where it stands in the text: the first character from 0, and how many, in UTF-16 code units" + (orNull ? "; null where nothing does." : "."), 2, Count("Characters."));
        return orNull ? place.OrNull() : place;
    }

    private static Microsoft.OpenApi.OpenApiSchema Range(string about) => Tuple(about, 2, Number("An end of the range.")).OrNull();
}
