using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>What could be asked about the supplies and outlets that something is plugged into.</summary>
internal static class SupplyDrafts
{
    /// <summary>The drafts.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<QuestionDraft> Of(WiredRig rig)
    {
        foreach (var supply in rig.Supplies)
        {
            var id = supply.Supply.Id;
            List<WiredOutlet> used = [.. rig.Outlets.Items.Where(outlet => outlet.Rating.Supply.Id == id && outlet.Feeds.Count > 0)];
            if (used.Count == 0)
                continue;
            if (supply.Regulated is null)
                yield return OfSupply(
                    QuestionTopic.Regulated, "regulated", id, $"Is {id} regulated?", ("regulated", true), ("not regulated", false),
                    static (one, answer) => one with { Regulated = answer });
            if (supply.Supply.Outlets.Count > 1 && used.Exists(static outlet => outlet.Rating.Isolated.IsAssumed))
                yield return OfSupply(
                    QuestionTopic.Isolated,
                    "isolated",
                    id,
                    $"Has each outlet of {id} a return of its own (isolated)?",
                    ("not isolated", false),
                    ("isolated", true),
                    static (one, answer) => one with { Isolated = answer });
            var unmarked = Names(used, static outlet => outlet.Form.Value == SupplyForm.Direct && outlet.Polarity.IsAssumed);
            if (unmarked.Count > 0)
                yield return Polarity(id, unmarked, rig);
            foreach (var outlet in used)
            {
                if (outlet.Volts is null)
                    yield return Voltage(outlet.Rating);
                else if (!outlet.Rating.Form.IsKnown && outlet.Rating.Modes.Length == 1)
                    yield return Form([outlet.Rating]);
            }

            var formless = used
                .Where(static outlet => outlet is { Volts: not null, Rating: { Form.Origin: Origin.Assumed, Modes.Length: 1 } })
                .Select(static outlet => outlet.Rating)
                .ToList();
            if (formless.Count > 0)
                yield return Form(formless);
        }

        foreach (var feed in rig.Feeds.Items.Where(static feed => feed is { Outlets: [{ SettingIsStated: false }], Joined: Joint.None }))
            yield return Setting(feed);
    }

    private static ValueList<string> Names(List<WiredOutlet> outlets, Func<OutletRating, bool> isAsked) =>
        [.. outlets.Where(outlet => isAsked(outlet.Rating)).Select(static outlet => outlet.Name)];

    private static QuestionDraft OfSupply(
        QuestionTopic topic, string key, string id, string text, (string Words, bool Value) usual, (string Words, bool Value) other,
        Func<Supply, bool, Supply> change)
    {
        return new([id], IsOfEach: false, about => new OpenQuestion(topic, about, key, text, [Answer(usual), Answer(other)]));

        PossibleAnswer Answer((string Words, bool Value) answer) => new(
            answer.Words,
            $"{id}: {{ {key}: {(answer.Value ? "true" : "false")} }}",
            rig => rig.WithSupply(id, supply => change(supply, answer.Value)));
    }

    private static QuestionDraft Polarity(string id, ValueList<string> names, WiredRig rig)
    {
        return new(names, IsOfEach: false, some => new OpenQuestion(
            QuestionTopic.Polarity,
            some,
            "polarity",
            $"Which polarity does the label of {id} show for {Phrases.List(some)}?",
            [Answer(some, Gear.Polarity.CentreNegative), Answer(some, Gear.Polarity.CentrePositive)]));

        PossibleAnswer Answer(ValueList<string> some, Polarity polarity) => new(
            PolarityText.Of(polarity),
            string.Join(
                "; ",
                some.Items.Select(name => LineOf(
                    rig.Outlets.Items.First(outlet => outlet.Name == name).Rating.Outlet, $"polarity: {PolarityText.Of(polarity)}", id))),
            to => to.WithOutlets(some, outlet => outlet with { Polarity = polarity }));
    }

    /// <summary>Each answer is what the outlet's label lacks, put behind it.</summary>
    private static QuestionDraft Voltage(OutletRating outlet)
    {
        return new([outlet.Name], IsOfEach: false, about => new OpenQuestion(
            QuestionTopic.Voltage,
            about,
            "label",
            $"What voltage does {outlet.Name} give?",
            [
                .. CommonVoltage.All.Select(volts => new PossibleAnswer(
                    volts.Words,
                    LineOf(outlet, TextFor(volts.Text)),
                    rig => rig.WithOutlets(about, one => one with { Label = NameplateReader.Read(TextFor(volts.Text)) }))),
            ]));

        string TextFor(string volts) => $"{outlet.Outlet.Label.Text} {volts}".Trim();
    }

    private static QuestionDraft Form(List<OutletRating> outlets)
    {
        var each = outlets.ToDictionary(static outlet => outlet.Name, StringComparer.Ordinal);
        return QuestionDraft.OfEach(
            QuestionTopic.Form,
            "label",
            [.. outlets.Select(static outlet => outlet.Name)],
            static some => some is [var only]
                ? $"Does {only} give direct or alternating current?"
                : $"Does any of these give alternating current: {Phrases.List(some)}?",
            ("none: all d.c.", "d.c.", "a.c."),
            (name, isUsual) => LineOf(each[name], TextFor(each[name], isUsual)),
            (rig, names, isUsual) => names.Items.Aggregate(
                rig, (so, name) => so.WithOutlets(
                    [name], outlet => outlet with { Label = NameplateReader.Read(TextFor(each[name], isUsual)) })));

        static string TextFor(OutletRating outlet, bool isUsual)
        {
            var label = outlet.Outlet.Label.Text.Length > 0 ? outlet.Outlet.Label.Text : FigureDisplay.Printed(outlet.Modes[0].Volts);
            return $"{label} {(isUsual ? "DC" : "AC")}";
        }
    }

    private static string LineOf(OutletRating outlet, string label) =>
        $"{outlet.Supply.Id}: {{ outlets: {{ {outlet.Outlet.Id}: \"{label}\" }} }}";

    private static QuestionDraft Setting(WiredFeed feed)
    {
        var outlet = feed.Outlets[0];
        var settings = outlet.Rating.Modes.Select(static mode => mode.Volts)
            .Where(static volts => volts is { IsSingle: true })
            .Select(static volts => volts!.Value.Low)
            .Distinct()
            .OrderByDescending(volts => volts == outlet.Volts);
        return new([outlet.Name], IsOfEach: false, about => new OpenQuestion(
            QuestionTopic.Setting,
            about,
            "at",
            $"How is {outlet.Name} set?",
            [
                .. settings.Select(volts => new PossibleAnswer(
                    FigureDisplay.Printed<Volt>(volts),
                    $"- {{ from: {outlet.Name}, at: {volts}, to: [{string.Join(", ", feed.Feed.To)}] }}",
                    rig => SetTo(rig, feed.Index, volts))),
            ]));
    }

    private static Rig SetTo(Rig rig, int feed, Volts volts) => rig with
    {
        Wired = (ValueList<Feed>?)[.. rig.Wired!.Value.Items.Select((one, place) => place == feed ? one with { At = [volts] } : one)],
    };

    private static string LineOf(Outlet outlet, string added, string supply)
    {
        var label = outlet.Label.Text.Length > 0 ? $"label: \"{outlet.Label.Text}\", " : "";
        return $"{supply}: {{ outlets: {{ {outlet.Id}: {{ {label}{added} }} }} }}";
    }
}
