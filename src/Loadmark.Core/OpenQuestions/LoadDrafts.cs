using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>What could be asked about the loads that are plugged in.</summary>
internal static class LoadDrafts
{
    /// <summary>Voltages that labels commonly print, the most common first (common practice, no source).</summary>
    private static readonly string[] CommonVoltages = ["9 V DC", "12 V DC", "18 V DC", "9 V AC"];

    /// <summary>Currents as labels commonly print them, in mA, the middling one first (common practice, no source).</summary>
    private static readonly int[] CommonDraws = [100, 20, 300, 500];

    /// <summary>The drafts.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<QuestionDraft> Of(WiredRig rig)
    {
        List<LoadRating> loads = [.. rig.Loads.Items.Where(static load => load.Feeds.Count > 0 && !load.IsFedSupply).Select(static load => load.Rating)];
        var direct = loads.Where(static load => load.Form.Value == SupplyForm.Direct && !load.TakesEitherForm).ToList();
        foreach (var load in direct.Where(static load => !load.Polarity.IsKnown))
            yield return Polarity([load.Id]);
        if (direct.Where(static load => load.Polarity.Origin == Origin.Assumed).Select(static load => load.Id).ToList() is { Count: > 0 } silent)
            yield return Polarity([.. silent]);
        foreach (var load in loads)
        {
            if (!load.Voltage.IsKnown)
                yield return Voltage(load.Id);
            else if (load.Form.IsAssumed && !load.TakesEitherForm)
                yield return Form(load.Id, load.Voltage.Value);
            if (load.Running is null || load.StandIn is not null || load.DrawIsUnclear)
                yield return Draw(load);
        }

        var shared = rig.Returns.Items.Where(static group => group.Loads.Count > 1).SelectMany(static group => group.Loads)
            .Where(static load => !load.IsFedSupply).Select(static load => load.Rating).Distinct().ToList();
        if (shared.Where(static load => load.Ground.IsAssumed).Select(static load => load.Id).ToList() is { Count: > 0 } grounds)
            yield return Ground([.. grounds]);
        if (shared.Where(static load => load.IsDigital is null).Select(static load => load.Id).ToList() is { Count: > 0 } kinds)
            yield return Kind([.. kinds], rig.Rig);
    }

    private static QuestionDraft Polarity(ValueList<string> loads) => Each(
        QuestionTopic.Polarity,
        "polarity",
        loads,
        static some => some is [var only]
            ? $"Which polarity does the drawing beside the jack of {only} show?"
            : $"Does the drawing beside the jack of any of these show centre positive: {Phrases.List(some)}?",
        ("centre negative", "centre positive"),
        static (load, isUsual) => load with { Polarity = isUsual ? Gear.Polarity.CentreNegative : Gear.Polarity.CentrePositive });

    private static QuestionDraft Ground(ValueList<string> loads) => Each(
        QuestionTopic.Ground,
        "ground",
        loads,
        static some => some is [var only]
            ? $"Is {only} an old circuit with positive ground?"
            : $"Is any of these an old circuit with positive ground: {Phrases.List(some)}?",
        ("negative", "positive"),
        static (load, isUsual) => load with { Ground = isUsual ? GroundSide.Negative : GroundSide.Positive },
        ("negative ground", "positive ground"));

    private static QuestionDraft Kind(ValueList<string> loads, Rig rig)
    {
        var kinds = rig.Loads.Items.ToDictionary(static load => load.Id, static load => load.Kind?.Text, StringComparer.Ordinal);
        return new QuestionDraft(loads, IsOfEach: true, some => new OpenQuestion(
            QuestionTopic.Kind,
            some,
            "kind",
            some is [var only] ? $"Is {only} digital?" : $"Is any of these digital: {Phrases.List(some)}?",
            [
                Answer(some, some.Count == 1 ? "not digital" : "none of them", "analog"),
                .. some.Items.Select(id => Answer([id], some.Count == 1 ? "digital" : $"{id} is digital", "digital")),
            ]));

        PossibleAnswer Answer(ValueList<string> ids, string words, string kind) => new(
            words,
            string.Join(", ", ids.Items.Select(id => $"{id}: {{ kind: {TextOf(id, kind)} }}")),
            to => to.WithLoads(ids, load => load with { Kind = new LoadKind(TextOf(load.Id, kind)) }));

        string TextOf(string id, string kind) => kinds[id] is { } before ? $"{kind} {before}" : kind;
    }

    private static QuestionDraft Voltage(string id) => new([id], IsOfEach: false, about => new OpenQuestion(
        QuestionTopic.Voltage, about, "voltage", $"What voltage does the label of {id} print?", [.. CommonVoltages.Select(text => Typed(id, text))]));

    private static QuestionDraft Form(string id, QuantityRange<Volt> volts)
    {
        var text = volts.IsSingle ? $"{volts.Low}" : $"{volts.Low.ToNumberString()}-{volts.High}";
        return new([id], IsOfEach: false, about => new OpenQuestion(
            QuestionTopic.Form,
            about,
            "voltage",
            $"Is {id} made for direct or for alternating current?",
            [Typed(id, $"{text} DC") with { Words = "d.c." }, Typed(id, $"{text} AC") with { Words = "a.c." }]));
    }

    private static PossibleAnswer Typed(string id, string text) => new(
        text.Replace("DC", "d.c.", StringComparison.Ordinal).Replace("AC", "a.c.", StringComparison.Ordinal),
        $"{id}: {{ voltage: {text} }}",
        rig => rig.WithLoads([id], load => load with { Voltage = NameplateReader.Read(text) }));

    private static QuestionDraft Draw(LoadRating load)
    {
        IEnumerable<Amps> draws = load.DrawIsUnclear
            ? load.Load.Label!.AmbiguousAmps.Candidates
            : CommonDraws.Select(static milliamps => new Amps(milliamps / 1000m));
        return new([load.Id], IsOfEach: false, about => new OpenQuestion(
            QuestionTopic.Draw,
            about,
            "current",
            $"What current does the label of {load.Id} print?",
            [
                .. draws.Distinct().Select(amps => new PossibleAnswer(
                    FigureDisplay.Printed<Ampere>(amps),
                    $"{load.Id}: {{ current: {amps} }}",
                    rig => rig.WithLoads(about, one => one with { Current = amps }))),
            ]));
    }

    /// <summary>A question with two answers that several loads may be asked at once, the usual answer first.</summary>
    private static QuestionDraft Each(
        QuestionTopic topic,
        string key,
        ValueList<string> loads,
        Func<ValueList<string>, string> text,
        (string Usual, string Other) typed,
        Func<Load, bool, Load> change,
        (string Usual, string Other)? said = null)
    {
        var words = said ?? typed;
        return new QuestionDraft(loads, IsOfEach: true, some => new OpenQuestion(
            topic,
            some,
            key,
            text(some),
            [
                Answer(some, some.Count == 1 ? words.Usual : $"none: all {words.Usual}", isUsual: true),
                .. some.Items.Select(id => Answer([id], some.Count == 1 ? words.Other : $"{id}: {words.Other}", isUsual: false)),
            ]));

        PossibleAnswer Answer(ValueList<string> ids, string answer, bool isUsual) => new(
            answer,
            string.Join(", ", ids.Items.Select(id => $"{id}: {{ {key}: {(isUsual ? typed.Usual : typed.Other)} }}")),
            rig => rig.WithLoads(ids, load => change(load, isUsual)));
    }
}
