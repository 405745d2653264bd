using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of the answer to a check.</summary>
internal static class CheckShapes
{
    /// <summary>What a rig can come to, the worst first.</summary>
    public static readonly string[] Severities = ["harm", "fails", "open", "unsure", "noise", "margin", "note", "good"];

    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("Check", Object(
            "What the rules say of a rig as it is wired.",
            ("rig", Text("The rig's name.")),
            ("verdict", Word("The worst severity of the findings; open while nothing is plugged in, unless something is worse; good where something is and there is no finding.", Severities)),
            ("findings", List("The findings, the worst first.", book.Of("Finding"))),
            ("outlets", List("The outlets, as they are asked.", book.Of("OutletLoading"))),
            ("totals", List("Limits that several outlets share, as they are asked.", book.Of("TotalLoading"))),
            ("headroom", Number("The share of each limit that is to stay free: 0.1 is 10 %.")),
            ("headroomIsDefault", Flag("Whether the rig does not say its headroom.")),
            ("untold", List("What the rules cannot tell, and why.", book.Of("Untold"))),
            ("file", Text("The name that was asked with."))));
        book.Add("Finding", Object(
            "One thing that a rule has to say.",
            ("rule", Text("The rule, as in docs/rules: over-voltage.")),
            ("severity", Word("How bad it is.", Severities)),
            ("subjects", Texts("What it is about: ids of loads, outlets, supplies, leads.")),
            ("message", Text("What it is, in a sentence.")),
            ("working", Text("The arithmetic; null where there is none.").OrNull()),
            ("remedy", Text("What to do; null where there is nothing.").OrNull()),
            ("source", Text("What the rule rests on; null where it is the definition of the thing.").OrNull())));
        book.Add("OutletLoading", Object(
            "An outlet, as it is asked.",
            ("outlet", Text("supply/outlet.")),
            ("volts", Number("The voltage it is set to, V; null where it is not known.").OrNull()),
            ("limitAmps", Number("What it can give, A; null where it is not known.").OrNull()),
            ("runAmps", Number("What its loads draw when running, A; null where it is not known.").OrNull()),
            ("startAmps", Number("What its loads draw when starting, A; null where it is not known.").OrNull()),
            ("loads", Texts("Its loads."))));
        book.Add("TotalLoading", Object(
            "A limit that several outlets share, as it is asked: in watts where it is printed so, else in amps.",
            ("supply", Text("The supply.")),
            ("of", Text("Whose limit it is: the supply's, or a bank's.")),
            ("limitWatts?", Number("The limit, W.").OrNull()),
            ("runWatts?", Number("Running, W.").OrNull()),
            ("startWatts?", Number("Starting, W.").OrNull()),
            ("limitAmps?", Number("The limit, A.").OrNull()),
            ("runAmps?", Number("Running, A.").OrNull()),
            ("startAmps?", Number("Starting, A.").OrNull())));
        book.Add("Untold", Object(
            "What a rule cannot tell.",
            ("rule", Text("The rule.")),
            ("subjects", Texts("What it is about.")),
            ("because", Text("Why it cannot be told."))));
    }
}
