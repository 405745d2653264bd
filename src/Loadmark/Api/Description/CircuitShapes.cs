using Microsoft.OpenApi;
using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of the steady state and the first seconds.</summary>
internal static class CircuitShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("SteadyState", Object("What each load really gets.",
        [
            ("loads", List("The loads.", book.Of("SettledLoad"))),
            ("outlets", List("The outlets.", book.Of("SettledOutlet"))),
            .. Rest(book),
        ]));
        book.Add("SettledLoad", Object("A load in the steady state.", ("load", Text("Its id.")), Volts("At its jack"), Amps("Into it"), State(), Cycles(), Because()));
        book.Add("SettledOutlet", Object(
            "An outlet in the steady state.", ("outlet", Text("supply/outlet.")), Volts("At it"), Amps("Out of it"), ("state", Word("What it does.", "regulating", "limiting", "off")), Cycles()));
        book.Add("FirstSeconds", Object("The first seconds after switch-on.",
        [
            ("loads", List("The loads.", book.Of("StartedLoad"))),
            ("outlets", List("The outlets.", book.Of("StartedOutlet"))),
            ("settledAfterSeconds", Number("After how long nothing changes any more, s; null where that was not reached.").OrNull()),
            ("seconds", Number("How long was computed, s.")),
            ("isComplete", Flag("Whether it was computed to its end.")),
            ("events", List("What happens, in order.", book.Of("StartUpEvent"))),
            .. Rest(book),
        ]));
        book.Add("StartedLoad", Object(
            "A load in the first seconds.",
            ("load", Text("Its id.")),
            ("runsAfterSeconds", Number("After how long it runs, s; null where it never does.").OrNull()),
            ("lowestVolts", Number("The lowest voltage at its jack once it runs, V; null where it never does.").OrNull()),
            ("restarts", Count("How often it drops out and starts again.")),
            State(), Cycles(), Because()));
        book.Add("StartedOutlet", Object(
            "An outlet in the first seconds.",
            ("outlet", Text("supply/outlet.")),
            ("peakAmps", Number("The most that it gives, A; null where it was not computed.").OrNull()),
            ("peakAtSeconds", Number("When, s.").OrNull()),
            ("secondsOverLimit", Number("How long it is asked for more than its limit, s.")),
            ("surgeIsSpent", Flag("Whether what it bears for a moment was used up.")),
            ("pulseAmps", Range("What its peak may be where the charging of input capacitors decides it, or may, and that rests on assumed figures, A; null where it is peakAmps.")),
            ("pulseSecondsOverLimit", Range("How long it may be asked for more than its limit then, s; null where that is secondsOverLimit.")),
            ("pulseAssumed", Texts("What is assumed, and was taken at half and at double: input capacitance, source resistance."))));
        book.Add("StartUpEvent", Object(
            "Something that happens.",
            ("seconds", Number("When, s after switch-on.")),
            ("subject", Text("What it happens to.")),
            ("kind", Word("What happens.", "at-limit", "within-limit", "switches-off", "tries-again", "fuse-trips", "fuse-closes", "starts", "has-started", "drops-out")),
            ("volts", Number("The voltage there, V; null where it does not matter.").OrNull()),
            ("text", Text("It in a sentence."))));
        book.Add("TotalGiven", Object(
            "A limit that several outlets share, and what they give.",
            ("supply", Text("The supply.")),
            ("of", Text("Whose limit it is.")),
            ("limitAmps", Number("The limit, A; null where it is in watts.").OrNull()),
            ("amps", Number("Given, A.").OrNull()),
            ("limitWatts", Number("The limit, W; null where it is in amps.").OrNull()),
            ("watts", Number("Given, W.").OrNull())));
        book.Add("Assumption", Object(
            "A figure that the rig does not say.",
            ("figure", Text("Which figure.")),
            ("value", Text("What is taken for it, with its unit.")),
            ("subjects", Texts("For what.")),
            ("source", Text("What it rests on."))));
        AddSpread(book);
    }

    private static void AddSpread(ShapeBook book)
    {
        book.Add("Spread", Object(
            "What becomes of the figures when those of the rig are not known exactly.",
            ("samples", Count("Samples that were computed.")),
            ("asked", Count("Samples that were asked for.")),
            ("uncomputed", Count("Samples that could not be computed.")),
            ("seed", new OpenApiSchema { Type = JsonSchemaType.Integer, Minimum = "0", Description = "The seed that they follow from, 64 bits." }),
            ("quantiles", Text("Which quantiles the lists of three are.")),
            ("interval", Text("How the ends of a chance are computed.")),
            ("runs", book.Of("Chance")),
            ("loads", List("The loads.", book.Of("SpreadLoad"))),
            ("outlets", List("The outlets.", book.Of("SpreadOutlet"))),
            ("leftOut", Texts("What is not sampled.")),
            ("openUpwards", Texts("What may be larger without a bound that is known.")),
            ("assumptions", List("The widths that were taken.", book.Of("Assumption")))));
        book.Add("SpreadLoad", Object("A load.",
        [
            ("load", Text("Its id.")),
            .. Percentiles("volts", "Volts", "V"), .. Percentiles("lowestVolts", "LowestVolts", "V"), .. Percentiles("amps", "Amps", "A"), .. Percentiles("runsAfterSeconds", "RunsAfterSeconds", "s"),
            ("runs", book.Of("Chance")),
            ("cornerState", Word("How it fares where everything is at its worst.", "runs", "low", "off")),
        ]));
        book.Add("SpreadOutlet", Object("An outlet.",
        [
            ("outlet", Text("supply/outlet.")),
            .. Percentiles("volts", "Volts", "V"), .. Percentiles("amps", "Amps", "A"), .. Percentiles("peakAmps", "PeakAmps", "A"),
            ("limitAmps", Number("What it can give, A; null where it is not known.").OrNull()),
        ]));
        book.Add("Chance", Object(
            "How often something held.",
            ("held", Count("Samples in which it held.")), ("of", Count("Samples.")), ("share", Number("Their share, 0 to 1.")),
            ("low", Number("The lower end of its interval.")), ("high", Number("The upper end of its interval."))));
    }

    private static (string, IOpenApiSchema)[] Percentiles(string name, string inWords, string unit) =>
    [
        ($"{name}?", Tuple($"Its 5 %, 50 % and 95 % quantiles, {unit}; null where a sample of that rank has none.", 3, Number("A quantile.").OrNull())),
        ($"corner{inWords}?", Number($"It where everything is at its worst, {unit}; null where it has none.").OrNull()),
    ];

    private static OpenApiSchema Range(string about) => Tuple(about, 2, Number("From, and to.")).OrNull();

    private static (string, IOpenApiSchema)[] Rest(ShapeBook book) =>
    [
        ("totals", List("Limits that several outlets share.", book.Of("TotalGiven"))),
        ("findings", List("What the rules say that is harm or fails.", book.Of("Finding"))),
        ("assumptions", List("Figures that the rig does not say.", book.Of("Assumption"))),
        ("untold", Texts("What cannot be told, and why.")),
        ("rig", Text("The rig's name.")),
        ("spread?", book.Of("Spread")),
    ];

    private static (string, IOpenApiSchema) Volts(string where) => ("volts", Number($"{where}, V; null where it is not computed.").OrNull());

    private static (string, IOpenApiSchema) Amps(string where) => ("amps", Number($"{where}, A; null where it is not computed.").OrNull());

    private static (string, IOpenApiSchema) State() => ("state", Word("How it fares.", "runs", "low", "off"));

    private static (string, IOpenApiSchema) Cycles() => ("cycles", Flag("Whether it goes on and off for ever."));

    private static (string, IOpenApiSchema) Because() => ("because", Text("Why it does not run; null where it does.").OrNull());
}
