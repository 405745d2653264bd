using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.OpenQuestions;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.OpenQuestions;

/// <summary>What is asked about a rig, and that nothing is asked whose answer changes nothing.</summary>
public sealed class QuestionSearchTests
{
    private static RigBuilder OneLoad(Func<Load, Load> load, Func<Outlet, Outlet>? outlet = null, decimal volts = 9) =>
        new RigBuilder().Load("delay-2", Plate.Dc(volts, 300), load).Supply("wall").Outlet("1", Plate.Dc(volts, 500), outlet).Feed("wall/1", "delay-2");

    private static RigBuilder Chain(Func<Load, Load> load) =>
        new RigBuilder().Load("delay-2", Plate.Dc(9, 300), load).Load("drive-3", Plate.Dc(9, 12)).Supply("wall").Outlet("1", Plate.Dc(9, 500)).Chain("wall/1", "delay-2", "drive-3");

    private static RigBuilder TwoOutlets(Func<Supply, Supply> supply) =>
        new RigBuilder().Digital("delay-2", Plate.Dc(9, 300)).Load("drive-3", Plate.Dc(9, 12)).Supply("brick", supply).Outlet("1", Plate.Dc(9, 500))
            .Outlet("2", Plate.Dc(9, 500)).Feed("brick/1", "delay-2").Feed("brick/2", "drive-3");

    [Fact]
    public void Where_all_is_stated_nothing_is_asked() => Assert.Empty(Ask(TwoOutlets(static supply => supply).Build()));

    [Fact]
    public void Where_nothing_is_plugged_in_nothing_is_asked() =>
        Assert.Empty(Ask(new RigBuilder().Load("delay-2", null).Supply("wall").Outlet("1", Plate.Empty).Build()));

    [Theory]
    [InlineData(9)]
    [InlineData(12)]
    public void A_load_without_a_polarity_is_asked_for_it(int volts)
    {
        var question = Only(OneLoad(static load => load with { Polarity = null }, volts: volts));

        Says(question, QuestionTopic.Polarity, "polarity", ["delay-2"], ("centre negative", Severity.Good), ("centre positive", Severity.Harm));
        Assert.Equal("delay-2: { polarity: centre positive }", question.Answers[1].Line);
        Assert.Equal(Severity.Harm, NameplateCheck.Of(question.Answers[1].Apply(OneLoad(static load => load with { Polarity = null }).Build())).Verdict);
    }

    [Fact]
    public void An_adaptor_without_a_polarity_is_asked_for_it() =>
        Says(
            Only(OneLoad(static load => load, static outlet => outlet with { Polarity = null })), QuestionTopic.Polarity, "polarity", ["wall/1"],
            ("centre negative", Severity.Good), ("centre positive", Severity.Harm));

    /// <summary>Each polarity hides what the other changes, as long as both are unknown.</summary>
    [Fact]
    public void Two_that_are_not_known_are_both_asked_for()
    {
        var questions = Ask(OneLoad(static load => load with { Polarity = null }, static outlet => outlet with { Polarity = null }, 12).Build());

        Assert.Equal([["delay-2"], ["wall/1"]], questions.Select(static question => question.About));
        Assert.All(questions, static question => Assert.Equal(Severity.Harm, question.Worst));
    }

    [Fact]
    public void Whether_a_load_is_digital_is_asked_only_where_it_shares_a_return()
    {
        static Load Silent(Load load) => load with { Kind = null };

        Says(Only(Chain(Silent)), QuestionTopic.Kind, "kind", ["delay-2"], ("not digital", Severity.Good), ("digital", Severity.Noise));
        Assert.Equal("delay-2: { kind: digital }", Only(Chain(Silent)).Answers[1].Line);
        Assert.Empty(Ask(OneLoad(Silent).Build()));
    }

    [Fact]
    public void A_kind_that_was_typed_keeps_its_word()
    {
        var rig = Chain(static load => load with { Kind = new LoadKind("tuner") }).Build();

        Assert.Equal("digital tuner", Assert.Single(Ask(rig)).Answers[1].Apply(rig).Loads[0].Kind!.Text);
    }

    [Fact]
    public void Several_of_a_kind_are_asked_about_at_once()
    {
        var question = Only(Chain(static load => load with { Kind = null }), static rig => rig with { Loads = [.. rig.Loads.Items.Select(static load => load with { Kind = null })] });

        Says(
            question, QuestionTopic.Kind, "kind", ["delay-2", "drive-3"], ("none of them", Severity.Good), ("delay-2: digital", Severity.Noise),
            ("drive-3: digital", Severity.Noise));
        Assert.Equal("Is any of these digital: delay-2 and drive-3?", question.Text);
    }

    [Fact]
    public void The_ground_is_asked_for_only_where_a_return_is_shared()
    {
        static Load Silent(Load load) => load with { Ground = null };

        Says(Only(Chain(Silent)), QuestionTopic.Ground, "ground", ["delay-2"], ("negative ground", Severity.Good), ("positive ground", Severity.Harm));
        Assert.Empty(Ask(OneLoad(Silent).Build()));
    }

    [Fact]
    public void Isolation_is_asked_for_where_it_decides_over_noise()
    {
        Says(
            Only(TwoOutlets(static supply => supply with { Isolated = null })), QuestionTopic.Isolated, "isolated", ["brick"],
            ("not isolated", Severity.Noise), ("isolated", Severity.Good));
        Assert.Empty(Ask(OneLoad(static load => load).Build(static rig => rig with { Supplies = [rig.Supplies[0] with { Isolated = null }] })));
    }

    [Fact]
    public void Regulation_is_asked_for() =>
        Says(
            Only(OneLoad(static load => load), static rig => rig with { Supplies = [rig.Supplies[0] with { Regulated = null, Mains = Plate.Mains(230, 230, 50, 50) }] }),
            QuestionTopic.Regulated, "regulated", ["wall"], ("regulated", Severity.Good), ("not regulated", Severity.Unsure));

    [Fact]
    public void A_load_without_a_voltage_is_asked_for_it()
    {
        var question = Only(OneLoad(static load => load with { Label = Plate.AmpsOnly(300) }));

        Assert.Equal((QuestionTopic.Voltage, "voltage"), (question.Topic, question.Key));
        Assert.Equal(["9 V d.c.", "12 V d.c.", "18 V d.c.", "9 V a.c."], question.Answers.Items.Select(static answer => answer.Words));
        Assert.Equal([Severity.Good, Severity.Margin, Severity.Margin], question.Answers.Items.Take(3).Select(static answer => answer.LeadsTo));
    }

    [Fact]
    public void Direct_or_alternating_current_is_asked_for()
    {
        var question = Only(OneLoad(static load => load with { Label = NameplateReader.Read("12V 300mA"), Polarity = null }, static outlet => outlet, 12), topic: QuestionTopic.Form);

        Assert.Equal(["d.c.", "a.c."], question.Answers.Items.Select(static answer => answer.Words));
        Assert.Equal("delay-2: { voltage: 12 V AC }", question.Answers[1].Line);
        Assert.True(question.Answers[1].LeadsTo >= Severity.Unsure);
    }

    [Fact]
    public void A_draw_that_is_not_known_is_asked_for()
    {
        var question = Only(OneLoad(static load => load with { Label = Plate.Dc(9), Kind = null }), topic: QuestionTopic.Draw);

        Says(
            question, QuestionTopic.Draw, "current", ["delay-2"], ("100 mA", Severity.Good), ("20 mA", Severity.Good), ("300 mA", Severity.Good),
            ("500 mA", Severity.Margin));
    }

    [Fact]
    public void A_setting_that_is_not_given_is_asked_for()
    {
        var rig = new RigBuilder().Load("delay-2", Plate.Dc(9, 300)).Supply("brick").Outlet("1", Plate.Modes((9, 500), (18, 250))).Feed("brick/1", "delay-2");

        var question = Only(rig);
        Assert.Equal((QuestionTopic.Setting, "at"), (question.Topic, question.Key));
        Assert.Equal(Severity.Harm, question.Answers.Items.Single(static answer => answer.Words == "18 V").LeadsTo);
        Assert.Equal(Severity.Good, question.Answers.Items.Single(static answer => answer.Words == "9 V").LeadsTo);
    }

    [Fact]
    public void Plug_sizes_are_asked_for_once_for_the_rig_and_come_last()
    {
        var questions = Ask(
            TwoOutlets(static supply => supply).Build(static rig => rig with { Loads = [.. rig.Loads.Items.Select(static load => load with { Plug = null, Polarity = null })] }));

        Assert.Equal([QuestionTopic.Polarity, QuestionTopic.Plug], questions.Select(static question => question.Topic));
        Assert.Equal(["delay-2", "drive-3"], questions[1].About);
        Assert.Equal("none: all 5.5x2.1", questions[1].Answers[0].Words);
    }

    /// <summary>Applying an answer, as a click does, takes the question away; and at least two of its answers make the rules say different things.</summary>
    [Fact]
    public void Every_question_has_answers_that_differ_and_settle_it() =>
        WiredRigGen.Rig().Sample(
            static rig =>
            {
                var questions = Ask(rig);
                Assert.Equal(questions.Select(static question => question.Worst).OrderDescending(), questions.Select(static question => question.Worst));
                foreach (var question in questions)
                {
                    Assert.True(Differ(question, question.TriedOn!), question.Text);
                    foreach (var answer in question.Answers)
                        Assert.DoesNotContain(
                            Ask(answer.Apply(rig)), next => next.Topic == question.Topic && question.About.Items.All(next.About.Items.Contains));
                }
            },
            iter: Rounds.Of(60));

    /// <summary>Each question judges the rig once for each load: of many loads not all can be tried, and that is said.</summary>
    [Fact]
    public void What_a_large_rig_is_asked_is_sought_within_steps_in_proportion_to_it_and_what_is_left_is_said()
    {
        var (small, large) = (Star(12), Star(400));
        var (few, many) = (QuestionSearch.Search(small, TestContext.Current.CancellationToken), QuestionSearch.Search(large, TestContext.Current.CancellationToken));

        Assert.Equal(0, few.LeftOut);
        Assert.Equal(NameplateCheck.Of(small).Untold, few.Tell(NameplateCheck.Of(small)).Untold);
        Assert.InRange(many.Steps, 1, 1000 * 1201);
        Assert.InRange(many.LeftOut, 1, 10);
        var untold = many.Tell(NameplateCheck.Of(large)).Untold.Items[^1];
        Assert.Equal($"What is worth asking was not sought to the end: {many.LeftOut} possible questions of a rig this large were not tried.", untold.Because);
    }

    private static Rig Star(int loads)
    {
        var rig = new RigBuilder();
        for (var load = 1; load <= loads; load++)
            rig = rig.Load($"load-{load}", Plate.Dc(9, 10), static one => one with { Polarity = null, Plug = null, Ground = null, Kind = null });
        rig = rig.Supply("brick", static one => one with { Isolated = null, Regulated = null });
        for (var load = 1; load <= loads; load++)
            rig = rig.Outlet($"{load}", Plate.Dc(9, 100), static one => one with { Polarity = null, Plug = null });
        for (var load = 1; load <= loads; load++)
            rig = rig.Feed($"brick/{load}", $"load-{load}");
        return rig.Build();
    }

    private static IReadOnlyList<OpenQuestion> Ask(Rig rig) => QuestionSearch.Of(rig, TestContext.Current.CancellationToken);

    private static bool Differ(OpenQuestion question, Rig rig) =>
        question.Answers.Items.Select(answer => string.Join('\n', NameplateCheck.Of(answer.Apply(rig)).Findings.Where(static finding => finding.Severity > Severity.Note).Select(static finding => $"{finding.Rule}{finding.Severity}{finding.Subjects}").Order(StringComparer.Ordinal)))
            .Distinct(StringComparer.Ordinal).Count() > 1;

    private static OpenQuestion Only(RigBuilder rig, Func<Rig, Rig>? change = null, QuestionTopic? topic = null) =>
        Assert.Single(Ask(rig.Build(change)), question => topic is null || question.Topic == topic);

    private static void Says(OpenQuestion question, QuestionTopic topic, string key, ValueList<string> about, params (string Words, Severity LeadsTo)[] answers)
    {
        Assert.Equal((topic, key), (question.Topic, question.Key));
        Assert.Equal(about, question.About);
        Assert.Equal(answers, question.Answers.Items.Select(static answer => (answer.Words, answer.LeadsTo)));
        Assert.EndsWith("?", question.Text, StringComparison.Ordinal);
    }
}
