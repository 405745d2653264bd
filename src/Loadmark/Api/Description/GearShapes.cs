using Loadmark.Answers;
using Loadmark.Api.Library;
using Microsoft.OpenApi;
using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of the gear library.</summary>
internal static class GearShapes
{
    private static readonly string[] Kinds = [.. GearAddress.Kinds];

    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("GearList", Object("Gear of the library.", ("gear", List("The best match first; where nothing is looked for, loads, supplies and leads by tag.", book.Of("GearSummary")))));
        book.Add("GearSummary", Object("A piece of gear, in a list.", [.. Head(), ("rigs", Count("How many rigs have it."))]));
        book.Add("GearShown", Object(
            "A piece of gear, with all there is to say of it.",
            [
                .. Head(),
                ("fields", List("What is said of it, as a rig file spells it.", book.Of("GearField"))),
                .. Measured(book),
                ("rigs", Texts("The rigs that have it, the last changed first.")),
                ("changes", List("Every change, the oldest first.", book.Of("GearChange"))),
            ]));
        book.Add("GearMeasured", Object("A load, and what its readings come to.", [.. Head(), .. Measured(book)]));
        book.Add("GearField", Object("One thing that is said.", ("key", Text("The key of the rig file; of an outlet or a bank with its id: outlet 5.")), ("value", Text("What is said."))));
        book.Add("GearDifference", Object(
            "One thing that is said otherwise.",
            ("key", Text("The key of the rig file; of an outlet or a bank with its id: outlet 5.")),
            ("before", Text("What was said; null where nothing was.").OrNull()),
            ("after", Text("What is said; null where nothing is.").OrNull())));
        book.Add("GearChange", Object(
            "One change.",
            ("number", Count("Counts up from 1; the revision after it.")),
            ("what", Text("What it did.")),
            ("made", Moment("When it was made, UTC.")),
            ("removes", Flag("Whether it removed the piece.")),
            Differences(book)));
        book.Add("MeasuredDraw", Object(
            "What readings come to.",
            ("amps", Number("The library's figure: their mean, rounded, A.")),
            ("seconds", Number("How long a starting current lasts, s; null where it was not timed.").OrNull()),
            ("readings", Count("How many readings there are.")),
            ("leftOut", Count("How many of them are too far from the rest to count.")),
            ("leastAmps", Number("The least that counts, A.")),
            ("mostAmps", Number("The most that counts, A.")),
            ("deviationAmps", Number("Their standard deviation, A; null where there are too few.").OrNull()),
            ("uncertaintyAmps", Number("The standard uncertainty of the mean, A; null where nothing tells it.").OrNull()),
            ("uncertaintyFromReadingsAmps", Number("What the readings have to do with it, A; null where there are too few.").OrNull()),
            ("uncertaintyFromMeterAmps", Number("What the meter has to do with it, A; null where its accuracy is not known.").OrNull()),
            ("how", Text("How the figure came about, in a sentence."))));
        book.Add("MeterReading", Object(
            "One reading.",
            ("of", Word("What was measured.", "running", "starting")),
            ("amps", Number("What the meter showed, A.")),
            ("seconds", Number("How long it lasted, s; null where it was not timed.").OrNull()),
            ("meterShare", Number("How far the meter may be off, as a share of the reading; null where it is not known.").OrNull()),
            ("meterAmps", Number("How far it may be off besides, A; null where it is not known.").OrNull()),
            ("taken", Moment("When, UTC.")),
            ("note", Text("What there is to say of it; null for nothing.").OrNull()),
            ("struckOut", Flag("Whether somebody has struck it out, so that it does not count."))));
        book.Add("WhatTheMeterShowed", Object(
            "What a meter showed of a load: run or start, or both.",
            ("run?", Text("The running current: 212 mA.").OrNull()),
            ("start?", Text("The starting current, and how long it lasted: 520 mA for 1.5 s.").OrNull()),
            ("meter?", Text("The meter's accuracy, as its leaflet tells it: 1 % + 2 mA.").OrNull()),
            ("note?", Text("What else there is to say.").OrNull())));
        AddTaken(book);
        AddAffected(book);
    }

    private static void AddTaken(ShapeBook book)
    {
        book.Add("GearTaken", Object(
            "What became of a file of gear, or would become.",
            ("added", Count("Pieces that are new in the library now.")),
            ("changed", Count("Pieces of which the library says something else now.")),
            ("left", Count("Pieces of which it says something else than the file, and that were left as they are.")),
            ("same", Count("Pieces of which it says all of it already.")),
            ("refused", Count("Pieces that cannot be taken.")),
            ("overtaken", Count("Pieces that somebody else changed in between; they were not taken.")),
            ("rows", List("The pieces, in the order of the file.", book.Of("GearRow"))),
            ("leftOut", Texts("Columns of a table that are not taken, each with why."))));
        book.Add("GearRow", Object(
            "One piece of the file.",
            ("line", Count("The line of the file, from 1; null where it is not of a file.").OrNull()),
            ("kind", Word("What sort of thing it is; null where that cannot be told.", Kinds).OrNullWord()),
            ("tag", Text("Its tag as typed; empty where it has none.")),
            ("state", Word("What it is to the library.", "new", "same", "differs", "refused")),
            ("taken", Flag("Whether it was taken.")),
            Differences(book),
            ("because", Text("Why it cannot be taken; null where it can.").OrNull())));
    }

    private static void AddAffected(ShapeBook book)
    {
        book.Add("RigsAffected", Object("A piece of gear, and the rigs that have other figures of it.", [.. Head(), ("affected", List("The rigs, the worst first.", book.Of("RigAffected")))]));
        book.Add("RigAffected", Object(
            "A rig that has other figures of a piece of gear than the library now has, or had.",
            ("id", new OpenApiSchema { Type = JsonSchemaType.String, Format = "uuid", Description = "What the rig is known by." }),
            ("rig", Text("Its name.")),
            ("revision", Count("The rig's revision.")),
            ("takesFromLibrary", Flag("Whether it takes the piece from the library, and so has the new figures already.")),
            Differences(book),
            ("verdictBefore", Word("The verdict with the figures that it has, or had; null where it cannot be judged.", [.. JsonWords.Severities()]).OrNullWord()),
            ("verdictAfter", Word("The verdict with the library's figures; null where it cannot be judged.", [.. JsonWords.Severities()]).OrNullWord()),
            ("newFindings", List("Findings that were not there before, the worst first.", book.Of("Finding"))),
            ("because", Text("Why it cannot be judged; null where it can.").OrNull())));
    }

    private static (string, IOpenApiSchema)[] Head() =>
    [
        ("kind", Word("What sort of thing it is.", Kinds)),
        ("tag", Text("Its tag.")),
        ("name", Text("Its name; null where it has none.").OrNull()),
        ("label", Text("What is printed on it; null where that is not known.").OrNull()),
        ("words", Texts("The words that it is filed under.")),
        ("runAmps?", Number("Of a load what it draws when running, A; null where only its label tells.").OrNull()),
        ("startAmps?", Number("Of a load what it draws when starting, A; null where only its label tells.").OrNull()),
        ("startSeconds?", Number("Of a load how long that lasts, s; null where it is not known.").OrNull()),
        ("revision", Count("Grows with every change; to be sent back in If-Match with the next one.")),
        ("changed", Moment("When it was changed last, UTC.")),
    ];

    private static (string, IOpenApiSchema)[] Measured(ShapeBook book) =>
    [
        ("running", book.OfOrNull("MeasuredDraw")),
        ("starting", book.OfOrNull("MeasuredDraw")),
        ("readings", List("The readings, struck out ones too, the oldest first.", book.Of("MeterReading"))),
    ];

    private static (string, IOpenApiSchema) Differences(ShapeBook book) => ("differences", List("What is said otherwise.", book.Of("GearDifference")));

    private static OpenApiSchema Moment(string about) => new() { Type = JsonSchemaType.String, Format = "date-time", Description = about };
}
