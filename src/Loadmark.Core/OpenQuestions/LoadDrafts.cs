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
    /// <summary>Currents as labels commonly print them, in mA, the middling one first (common practice, no source).</summary>
    private static readonly int[] CommonDraws = [100, 20, 300, 500];

    /// <summary>The drafts.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<QuestionDraft> Of(WiredRig rig)
    {
        List<LoadRating> loads =
            [.. rig.Loads.Items.Where(static load => load.Feeds.Count > 0 && !load.IsFedSupply).Select(static load => load.Rating)];
        var direct = loads.Where(static load => load.Form.Value == SupplyForm.Direct && !load.TakesEitherForm).ToList();
        foreach (var load in direct.Where(static load => !load.Polarity.IsKnown))
            yield return Polarity([load.Id]);
        if (direct.Where(static load => load.Polarity.Origin == Origin.Assumed)
            .Select(static load => load.Id)
            .ToList() is { Count: > 0 } silent)
            yield return Polarity([.. silent]);
        foreach (var load in loads)
        {
            if (!load.Voltage.IsKnown)
                yield return Voltage(load.Id);
            else if (!load.Form.IsKnown && !load.TakesEitherForm)
                yield return Form([load]);
            if (load.Running is null || load.StandIn is not null || load.DrawIsUnclear)
                yield return Draw(load);
        }

        if (loads.Where(static load => load is { Voltage.IsKnown: true, Form.Origin: Origin.Assumed, TakesEitherForm: false })
            .ToList() is { Count: > 0 } formless)
            yield return Form(formless);
        var shared = rig.Returns.Items.Where(static group => group.Loads.Count > 1).SelectMany(static group => group.Loads)
            .Where(static load => !load.IsFedSupply).Select(static load => load.Rating).Distinct().ToList();
        if (shared.Where(static load => load.Ground.IsAssumed).Select(static load => load.Id).ToList() is { Count: > 0 } grounds)
            yield return Ground([.. grounds]);
        if (shared.Where(static load => load.IsDigital is null).Select(static load => load.Id).ToList() is { Count: > 0 } kinds)
            yield return Kind([.. kinds], rig.Rig);
    }

    private static QuestionDraft Polarity(ValueList<string> loads) => QuestionDraft.OfEach(
        QuestionTopic.Polarity,
        "polarity",
        loads,
        static some => some is [var only]
            ? $"Which polarity does the drawing beside the jack of {only} show?"
            : $"Does the drawing beside the jack of any of these show centre positive: {Phrases.List(some)}?",
        ("none: all centre negative", "centre negative", "centre positive"),
        static (id, isUsual) => $"{id}: {{ polarity: {(isUsual ? "centre negative" : "centre positive")} }}",
        static (rig, ids, isUsual) => rig.WithLoads(
            ids, load => load with { Polarity = isUsual ? Gear.Polarity.CentreNegative : Gear.Polarity.CentrePositive }));

    private static QuestionDraft Ground(ValueList<string> loads) => QuestionDraft.OfEach(
        QuestionTopic.Ground,
        "ground",
        loads,
        static some => some is [var only]
            ? $"Is {only} an old circuit with positive ground?"
            : $"Is any of these an old circuit with positive ground: {Phrases.List(some)}?",
        ("none: all negative ground", "negative ground", "positive ground"),
        static (id, isUsual) => $"{id}: {{ ground: {(isUsual ? "negative" : "positive")} }}",
        static (rig, ids, isUsual) => rig.WithLoads(
            ids, load => load with { Ground = isUsual ? GroundSide.Negative : GroundSide.Positive }));

    private static QuestionDraft Kind(ValueList<string> loads, Rig rig)
    {
        var kinds = rig.Loads.Items.ToDictionary(static load => load.Id, static load => load.Kind?.Text, StringComparer.Ordinal);
        return QuestionDraft.OfEach(
            QuestionTopic.Kind,
            "kind",
            loads,
            static some => some is [var only] ? $"Is {only} digital?" : $"Is any of these digital: {Phrases.List(some)}?",
            ("none of them", "not digital", "digital"),
            (id, isUsual) => $"{id}: {{ kind: {TextOf(id, isUsual)} }}",
            (to, ids, isUsual) => to.WithLoads(ids, load => load with { Kind = new LoadKind(TextOf(load.Id, isUsual)) }));

        string TextOf(string id, bool isUsual)
        {
            var word = isUsual ? "analog" : "digital";
            return kinds[id] is { } before ? $"{word} {before}" : word;
        }
    }

    /// <summary>Those of which the trade takes direct current for granted are asked about together.</summary>
    private static QuestionDraft Form(List<LoadRating> loads)
    {
        var volts = loads.ToDictionary(static load => load.Id, static load => TextOf(load.Voltage.Value), StringComparer.Ordinal);
        return QuestionDraft.OfEach(
            QuestionTopic.Form,
            "voltage",
            [.. loads.Select(static load => load.Id)],
            static some => some is [var only]
                ? $"Is {only} made for direct or for alternating current?"
                : $"Is any of these made for alternating current: {Phrases.List(some)}?",
            ("none: all d.c.", "d.c.", "a.c."),
            (id, isUsual) => $"{id}: {{ voltage: {TextFor(id, isUsual)} }}",
            (rig, ids, isUsual) => rig.WithLoads(ids, load => load with { Voltage = NameplateReader.Read(TextFor(load.Id, isUsual)) }));

        string TextFor(string id, bool isUsual) => $"{volts[id]} {(isUsual ? "DC" : "AC")}";

        static string TextOf(QuantityRange<Volt> volts) => volts.IsSingle ? $"{volts.Low}" : $"{volts.Low.ToNumberString()}-{volts.High}";
    }

    private static QuestionDraft Voltage(string id) => new([id], IsOfEach: false, about => new OpenQuestion(
        QuestionTopic.Voltage,
        about,
        "voltage",
        $"What voltage does the label of {id} print?",
        [.. CommonVoltage.All.Select(volts => Typed(id, volts))]));

    private static PossibleAnswer Typed(string id, CommonVoltage volts) => new(
        volts.Words,
        $"{id}: {{ voltage: {volts.Text} }}",
        rig => rig.WithLoads([id], load => load with { Voltage = NameplateReader.Read(volts.Text) }));

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
}
