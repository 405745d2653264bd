using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Search;

namespace Loadmark.Workshop.Asking;

/// <summary>What to look for in a shop, where nothing is there to plug into.</summary>
internal static class ShopAdvice
{
    private const string Wanted = "supply";

    /// <summary>Says what would do, each way planned before it is said.</summary>
    /// <param name="rig">The rig; without supplies.</param>
    /// <param name="isChain">Whether all loads are to hang on one lead.</param>
    /// <param name="cancellation">Stops it.</param>
    public static PlugInAnswer For(Rig rig, bool isChain, CancellationToken cancellation)
    {
        var ratings = rig.Loads.Items.Select(static load => LoadRating.Of(load)).ToList();
        List<string> asks = [.. ratings.Select(Unknown).OfType<string>()];
        var check = NameplateCheck.Of(rig);
        if (asks.Count > 0)
            return new PlugInAnswer
            {
                Verdict = PlugInVerdict.FindOut,
                Sentence = PlugInAdvisor.FindOut(asks),
                Because = ["Without that nobody can say what is safe."],
                Ifs = [.. asks],
                Rig = rig,
                Check = check,
            };

        var ways = Seen(isChain && rig.Loads.Count > 1 ? [OnOneLead(rig)] : [Isolated(rig), OnOneLead(rig)], cancellation);
        if (ways.Count == 0)
            return Refused(rig, check, isChain ? Seen([Isolated(rig)], cancellation) : []);
        List<string> granted = [.. ratings.GroupBy(Granted).Where(static alike => alike.Key.Length > 0).Select(static alike =>
            $"{ThingNames.List(alike.Select(static load => load.Id))} {Phrases.Is(alike.Count())} {alike.Key}, {ThingNames.AsUsual}: "
            + "look for the drawing of the plug")];
        return new PlugInAnswer
        {
            Verdict = PlugInVerdict.YesIf,
            Sentence = $"It wants {ways[0]}.",
            Because = [.. ratings.Select(
                static rating => $"{SentenceCase.Capital(ThingNames.The(rating.Id))} needs {LoadNeeds.Of(rating.Load)}.")],
            Ifs = [.. granted],
            Fits = [.. ways.Select(static way => $"{SentenceCase.Capital(way)}.")],
            Next =
            [
                new(
                    "May it give more current?",
                    "Yes. Things take what they need and no more: the milliamps of a supply are the most that it can give."),
                new(
                    "May it give other volts?",
                    "No. The volts have to be those that are printed: more can damage, less does not run as it should."),
            ],
            Rig = rig,
            Check = check,
        };
    }

    /// <summary>What has to be known before anything may be bought; null where it is.</summary>
    private static string? Unknown(LoadRating load)
    {
        var name = ThingNames.The(load.Id);
        if (!load.Voltage.IsKnown)
            return $"What voltage is {name} made for? Read its label.";
        if (!load.Form.IsKnown && !load.TakesEitherForm)
            return $"Does {name} want d.c. (⎓) or a.c. (~)? Read its label.";
        if (load.Form.Value == SupplyForm.Direct && !load.Polarity.IsKnown)
            return $"Is {name} centre negative or centre positive? Look for the drawing of the plug.";
        return load.Running is null ? $"How much current does {name} draw? Read its label, or measure." : null;
    }

    /// <summary>What is taken for granted of a load; empty where nothing is.</summary>
    private static string Granted(LoadRating load)
    {
        List<string> what = [];
        if (load.Form.IsAssumed && !load.TakesEitherForm)
            what.Add(load.Form.Value == SupplyForm.Direct ? "for direct current" : "for alternating current");
        if (load.Polarity.IsAssumed && load.Form.Value == SupplyForm.Direct && !load.TakesEitherForm)
            what.Add(PolarityText.Of(load.Polarity.Value));
        return string.Join(" and ", what);
    }

    /// <summary>An outlet as one asks for it in a shop: "9 V d.c., centre negative, 350 mA or more".</summary>
    private static string Described(Load load, Outlet outlet)
    {
        var rating = LoadRating.Of(load);
        var mode = outlet.Label.Modes[0];
        var (form, polarity) = rating switch
        {
            { TakesEitherForm: true } => (" a.c. or d.c.", ""),
            { Form.Value: SupplyForm.Alternating } => (" a.c.", ""),
            _ => (" d.c.", $", {PolarityText.Of(rating.Polarity.Value)}"),
        };
        var plug = rating.Plug is { IsKnown: true, IsAssumed: false } known ? $", plug {known.Value}" : "";
        return $"{mode.Volts}{form}{polarity}, {mode.Amps?.Value} or more{plug}";
    }

    /// <summary>The answer where no way that was asked for was seen to work.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="check">What the rules say of it.</param>
    /// <param name="instead">What was seen to work instead; empty for nothing.</param>
    private static PlugInAnswer Refused(Rig rig, CheckResult check, List<string> instead)
    {
        var sentence = instead.Count > 0
            ? $"Not on one lead: it wants {instead[0]}."
            : "No: nothing that was tried is known to do for all of them. Plug each into a supply of its own, chosen by its label.";
        return new PlugInAnswer
        {
            Verdict = PlugInVerdict.No,
            Sentence = sentence,
            Because = [sentence],
            Fits = [.. instead.Select(static way => $"{SentenceCase.Capital(way)}.")],
            Rig = rig,
            Check = check,
        };
    }

    /// <summary>The ways that are known to work: planned, and nothing could be harmed.</summary>
    private static List<string> Seen(IEnumerable<(string Text, Rig Rig)?> ways, CancellationToken cancellation)
    {
        var options = new PlanOptions();
        var seen = new List<string>();
        foreach (var way in ways)
        {
            if (way is var (text, rig)
                && RigPlanner.Plan(rig, options, cancellation) is { Unfed.Count: 0, Check.Verdict: < Severity.Unsure })
                seen.Add(text);
        }

        return seen;
    }

    /// <summary>An isolated outlet for each load.</summary>
    private static (string Text, Rig Rig)? Isolated(Rig rig)
    {
        var outlets = rig.Loads.Items.Select(load => MissingOutlet.For(load, rig.HeadroomInForce).Outlet).ToList();
        var list = string.Join("; ", rig.Loads.Items.Zip(outlets, Described).GroupBy(static text => text)
            .Select(static alike => alike.Count() == 1 ? alike.Key : $"{alike.Count()} × {alike.Key}"));
        var what = rig.Loads.Count == 1 ? $"a regulated supply with {list}" : $"{rig.Loads.Count} isolated outlets: {list}";
        return (what, With(rig, [.. outlets], isIsolated: true));
    }

    /// <summary>One outlet for all loads; null where there is one load, or where volts, kinds of current or polarities differ.</summary>
    private static (string Text, Rig Rig)? OnOneLead(Rig rig) => rig.Loads.Count > 1 && Common(rig) is { } outlet
        ? (
            $"one regulated supply with {Described(rig.Loads.Items[0], outlet)}, for all on one lead",
            With(rig, [outlet], isIsolated: false))
        : null;

    private static Rig With(Rig rig, ValueList<Outlet> outlets, bool isIsolated) => rig with
    {
        Supplies =
        [
            new Supply
            {
                Id = Wanted,
                Regulated = true,
                Isolated = isIsolated,
                Outlets = [.. outlets.Items.Select(static (outlet, index) => outlet with { Id = $"{index + 1}" })],
            },
        ],
        Leads = isIsolated ? rig.Leads : [.. rig.Leads.Items, PlugInWiring.ChainOf(rig.Loads.Count)],
    };

    /// <summary>One outlet for all loads on one lead; null where their volts, kinds of current or polarities differ.</summary>
    private static Outlet? Common(Rig rig)
    {
        var first = rig.Loads.Items[0];
        var sum = rig.Loads.Items.Sum(static load => LoadRating.Of(load).Running?.Value.Value ?? 0);
        var start = rig.Loads.Items.Sum(static load => LoadRating.Of(load).Starting?.Value.Value ?? 0);
        var together = first with
        {
            Id = "all",
            Label = NameplateReader.Read(first.Label?.Text ?? ""),
            Current = new Amps(sum),
            Watts = null,
            Run = null,
            Start = start > sum ? new TimedCurrent(new Amps(start), null) : null,
        };
        var alike = rig.Loads.Items.Select(static load => LoadRating.Of(load)).All(load => Same(load, LoadRating.Of(first)));
        return alike ? MissingOutlet.For(together, rig.HeadroomInForce).Outlet : null;
    }

    private static bool Same(LoadRating one, LoadRating other) =>
        one.Voltage.Value == other.Voltage.Value && one.Form.Value == other.Form.Value
        && (one.Form.Value == SupplyForm.Alternating || one.Polarity.Value == other.Polarity.Value);
}
