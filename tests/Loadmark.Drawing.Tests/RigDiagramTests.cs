using System.Diagnostics;
using System.Globalization;
using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Tests;

/// <summary>The single-line diagram of every example and of random rigs.</summary>
public sealed class RigDiagramTests
{
    public static TheoryData<string> Files() => [.. Rigs.ExampleFiles];

    [Theory]
    [MemberData(nameof(Files))]
    public void Examples_are_drawn_soundly_at_every_width(string file)
    {
        var rig = Rigs.Example(file);
        var check = NameplateCheck.Of(rig);
        foreach (var width in Rigs.Widths)
        {
            var scene = RigDiagram.Draw(rig, check, new DiagramOptions { Width = width, ShowsHeading = true });
            Assert.Equal(width, scene.Width);
            SceneAssert.IsSound(scene);
            SceneAssert.IsSound(RigDiagram.Draw(rig, check, new DiagramOptions { Width = width, Readings = ReadingsOf(rig, check) }));
        }
    }

    [Theory]
    [InlineData(1400)]
    [InlineData(360)]
    public void What_nobody_has_yet_is_marked(int width)
    {
        var rig = Rigs.Example(Rigs.ExampleFiles.First(static file => file.Contains("pit", StringComparison.Ordinal)));
        var chain = rig.Wired!.Value.Items.First(static feed => feed.Lead is not null).Lead;
        var marked = rig with
        {
            Supplies = [rig.Supplies[0] with { ToBuy = true }, .. rig.Supplies.Items.Skip(1)],
            Leads = [.. rig.Leads.Items.Select(lead => lead with { ToBuy = lead.Id == chain })],
        };
        Assert.DoesNotContain(TextsOf(rig), static text => text.Contains("to buy", StringComparison.Ordinal));
        Assert.Equal(2, TextsOf(marked).Count(static text => text.Contains("to buy", StringComparison.Ordinal)));

        List<string> TextsOf(Rig drawn)
        {
            var scene = RigDiagram.Draw(drawn, NameplateCheck.Of(drawn), new DiagramOptions { Width = width });
            SceneAssert.IsSound(scene);
            return [.. scene.Groups.SelectMany(static group => group.Shapes).OfType<Scenes.TextShape>().Select(static shape => shape.Text)];
        }
    }

    /// <summary>Volts, draw, polarity and ground can harm: they are told at every width, whatever else has no room.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_can_harm_is_left_out_at_no_width(bool showsReadings)
    {
        var (rig, check) = Rigs.Checked(
            """
            rig: r
            loads:
              fuzz-1: { name: Old germanium fuzz of the theatre, kind: fuzz, label: "9.6V DC 1.25A centre positive, positive ground", start: 1.5 A, isolate: true }
              drive-3: { name: Squeeze for the slow numbers, label: "18V AC 250mA" }
              delay-2: { name: Delay with the long tail, label: "24V 1.25A", start: 1.75 A for 2 s }
            supplies:
              brick: { outlets: { 1: "12V DC 1.25A centre positive", 2: "24V 1.5A", 3: "9V AC 1A" } }
            wired:
              - { from: brick/1, to: fuzz-1 }
              - { from: brick/2, to: delay-2 }
              - { from: brick/3, to: drive-3 }
            """);
        for (var width = DiagramOptions.LeastWidth; width < 1700; width += 7)
        {
            var options = new DiagramOptions { Width = width, Readings = showsReadings ? ReadingsOf(rig, check) : null };
            var groups = RigDiagram.Draw(rig, check, options).Groups;
            foreach (var (subject, texts) in ((string, string[])[])[
                ("fuzz-1", showsReadings ? ["centre|+", "ground"] : ["9.6 V", "1.25 A", "centre", "ground"]),
                ("drive-3", showsReadings ? [] : ["18 V a.c.", "250 mA"]),
                ("delay-2", showsReadings ? ["polarity"] : ["24 V", "1.25 A", "polarity"]),
                ("brick/1", ["12 V", "centre"]),
                ("brick/2", ["24 V", "polarity"])])
            {
                var shown = string.Join(
                    " · ",
                    groups.Where(group => group.Subject == subject).SelectMany(static group => group.Shapes).OfType<Scenes.TextShape>()
                        .Select(static shape => shape.Text));
                Assert.All(texts, text => Assert.True(text.Split('|').Any(shown.Contains), $"{width}: {subject} shows {shown}, not {text}"));
            }
        }
    }

    [Fact]
    public void Random_rigs_with_hostile_names_are_drawn_soundly() => Gen.Select(Rigs.Random, Gen.Double[200, 1700]).Sample(
        static (rig, width) =>
        {
            var check = NameplateCheck.Of(rig);
            SceneAssert.IsSound(RigDiagram.Draw(rig, check, new DiagramOptions { Width = width }));
            SceneAssert.IsSound(RigDiagram.Draw(rig, check, new DiagramOptions { Width = width, Readings = ReadingsOf(rig, check), ShowsHeading = true }));
        },
        iter: 150);

    [Fact]
    public void Everything_of_a_random_rig_is_in_the_picture_once() => Rigs.Random.Sample(
        static rig =>
        {
            var scene = RigDiagram.Draw(rig, NameplateCheck.Of(rig));
            Assert.Equal(rig.Loads.Items.Select(load => load.Id).Order(StringComparer.Ordinal), SubjectsOf(scene, SubjectKind.Load));
            Assert.Equal(rig.Supplies.Items.SelectMany(supply => supply.Outlets.Items.Select(outlet => $"{supply.Id}/{outlet.Id}")).Order(StringComparer.Ordinal), SubjectsOf(scene, SubjectKind.Outlet));
            Assert.Equal(rig.Supplies.Items.Select(supply => supply.Id).Order(StringComparer.Ordinal), SubjectsOf(scene, SubjectKind.Supply));
            Assert.Equal(rig.Wired?.Count ?? 0, scene.Groups.Count(group => group.Kind == SubjectKind.Lead));
        },
        iter: 100);

    [Fact]
    public void Boxes_of_things_never_overlap() => Gen.Select(Rigs.Random, Gen.Double[300, 1500]).Sample(
        static (rig, width) =>
        {
            var scene = RigDiagram.Draw(rig, NameplateCheck.Of(rig), new DiagramOptions { Width = width });
            var boxes = scene.Groups.Where(group => group.Kind is SubjectKind.Supply or SubjectKind.Outlet or SubjectKind.Load).Select(group => group.Bounds).ToList();
            for (var one = 0; one < boxes.Count; one++)
            {
                for (var other = one + 1; other < boxes.Count; other++)
                    Assert.False(boxes[one].Overlaps(boxes[other]));
            }
        },
        iter: 100);

    [Fact]
    public void Leads_of_a_rig_without_mistakes_or_joints_never_cross()
    {
        var rig = Rigs.Example("festival.rig.yaml");
        var shuffled = rig with { Loads = [.. rig.Loads.Items.Reverse()], Wired = new ValueList<Feed>([.. rig.Wired!.Value.Items.Reverse()]) };
        foreach (var width in (double[])[360, 720, 1100])
        {
            var leads = RigDiagram.Draw(shuffled, NameplateCheck.Of(shuffled), new DiagramOptions { Width = width }).Groups.Where(group => group.Kind == SubjectKind.Lead).ToList();
            for (var one = 0; one < leads.Count; one++)
            {
                for (var other = one + 1; other < leads.Count; other++)
                    Assert.False(leads[one].Bounds.Grow(-2).Overlaps(leads[other].Bounds.Grow(-2)), $"{leads[one].Key} and {leads[other].Key}");
            }
        }
    }

    [Fact]
    public void A_finding_shows_where_it_arises_as_sign_word_and_frame()
    {
        var rig = Rigs.Example("left-at-18.rig.yaml");
        var check = NameplateCheck.Of(rig);
        foreach (var width in (double[])[360, 720, 1100])
        {
            var scene = RigDiagram.Draw(rig, check, new DiagramOptions { Width = width });
            var group = Assert.Single(scene.Groups, group => group.Subject == "delay-2");
            Assert.Equal(Severity.Harm, group.Severity);
            Assert.Contains(group.Shapes, shape => shape is TextShape { Text: "harm", Ink: Ink.SignHarm });
            Assert.Contains(group.Shapes, shape => shape is LineShape { Ink: Ink.SignHarm });
            Assert.Contains(group.Shapes, shape => shape is RectShape { Ink: Ink.HarmFrame });
            Assert.Contains("Worst finding: harm.", group.Title, StringComparison.Ordinal);
            foreach (var subject in (string[])["brick/2", "drive-6"])
                Assert.Null(Assert.Single(scene.Groups, group => group.Subject == subject).Severity);
        }
    }

    [Fact]
    public void What_is_not_known_is_a_question_mark_in_an_open_gauge()
    {
        var (rig, check) = Rigs.Checked("rig: A\nloads:\n  X: { label: \"9V\" }\nsupplies:\n  s: { isolated: true, outlets: { 1: 9 V 100 mA } }\nwired:\n  - { from: s/1, to: X }\n");
        var outlet = Assert.Single(RigDiagram.Draw(rig, check).Groups, group => group.Kind == SubjectKind.Outlet);
        Assert.Contains(outlet.Shapes, shape => shape is PathShape { Ink: Ink.GaugeOpen });
        Assert.Contains(outlet.Shapes, shape => shape is TextShape { Text: "?" });
        Assert.Contains(outlet.Shapes, shape => shape is TextShape { Text: "? of 100 mA" });
        Assert.DoesNotContain(outlet.Shapes, shape => shape.Ink is Ink.GaugeRun or Ink.GaugeVessel);
    }

    [Fact]
    public void What_no_label_tells_is_said_to_be_unknown_and_no_value_stands_in_for_it()
    {
        var (rig, check) = Rigs.Checked("rig: A\nloads:\n  X: { label: \"30mA\" }\n  Y: { label: \"9V AC 30mA\" }\nsupplies:\n  s: { outlets: { 1: 12 V 100 mA } }\nwired:\n  - { from: s/1, to: X }\n");
        var scene = RigDiagram.Draw(rig, check);
        var (outlet, load, other) = (scene.Groups.Single(group => group.Subject == "s/1" && group.Kind == SubjectKind.Outlet), scene.Groups.Single(group => group.Subject == "X"), scene.Groups.Single(group => group.Subject == "Y"));
        Assert.Contains(load.Shapes, shape => shape is TextShape { Text: "? V" });
        Assert.Contains(load.Shapes, shape => shape is TextShape { Text: "polarity not known" });
        Assert.Contains("its voltage is not known, polarity not known", load.Title, StringComparison.Ordinal);
        Assert.DoesNotContain("9 V", load.Title, StringComparison.Ordinal);
        Assert.Contains(outlet.Shapes, shape => shape is TextShape { Text: "polarity ?" });
        Assert.Contains("polarity not known", outlet.Title, StringComparison.Ordinal);
        Assert.DoesNotContain("polarity", other.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void The_whole_name_is_in_the_title_where_the_picture_shortens_it()
    {
        var name = string.Join(' ', Enumerable.Range(1, 60).Select(number => number.ToString(CultureInfo.InvariantCulture)));
        var (rig, check) = Rigs.Checked($"rig: A\nloads:\n  X: {{ name: \"{name}\", label: \"9V 20mA\" }}\n");
        var load = Assert.Single(RigDiagram.Draw(rig, check).Groups, group => group.Kind == SubjectKind.Load);
        Assert.Contains(name, load.Title, StringComparison.Ordinal);
        var shown = Assert.Single(load.Shapes.OfType<TextShape>(), text => text.Text.EndsWith('…'));
        Assert.StartsWith(shown.Text[..^1], name, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rig: A\nloads: {}\nsupplies: {}\n", "No supplies and no loads yet.")]
    [InlineData("rig: A\nsupplies:\n  s: { outlets: { 1: 9 V 100 mA } }\n", "No loads yet.")]
    [InlineData("rig: A\nloads:\n  X: { label: \"9V 20mA\" }\nsupplies:\n  s: { outlets: { 1: 9 V 100 mA } }\n", "Nothing is wired yet.")]
    [InlineData("rig: A\nloads:\n  X: { label: \"9V 20mA\" }\n", "No supplies yet: nothing to feed these from.")]
    [InlineData("rig: A\nloads:\n  X: { label: \"9V 20mA\" }\n", "Not fed")]
    public void A_rig_that_lacks_something_says_what(string yaml, string says)
    {
        var (rig, check) = Rigs.Checked(yaml);
        foreach (var width in Rigs.Widths)
        {
            var scene = RigDiagram.Draw(rig, check, new DiagramOptions { Width = width });
            SceneAssert.IsSound(scene);
            Assert.Contains(scene.Groups.SelectMany(group => group.Shapes).OfType<TextShape>(), text => text.Text == says);
        }
    }

    [Fact]
    public void A_reading_takes_the_place_of_the_running_draw()
    {
        var rig = Rigs.Example("left-at-18.rig.yaml");
        var readings = new DiagramValues { Outlets = new Dictionary<string, OutletValues> { ["brick/1"] = new(new Amps(0.3m), "limiting") }, Loads = new Dictionary<string, LoadValues> { ["drive-6"] = new(new Volts(8.1m), "low") } };
        var scene = RigDiagram.Draw(rig, NameplateCheck.Of(rig), new DiagramOptions { Readings = readings });
        var outlet = Assert.Single(scene.Groups, group => group.Subject == "brick/1");
        Assert.Contains(outlet.Shapes, shape => shape is RectShape { Ink: Ink.GaugeReading });
        Assert.Contains(outlet.Shapes, shape => shape.Ink == Ink.GaugeOver);
        Assert.Contains(outlet.Shapes, shape => shape is TextShape { Text: "300 of 150 mA" });
        var load = Assert.Single(scene.Groups, group => group.Subject == "drive-6");
        Assert.Contains(load.Shapes, shape => shape is TextShape { Text: "8.1 V" });
    }

    [Theory]
    [InlineData(360)]
    [InlineData(1100)]
    public void Ten_thousand_loads_with_every_lead_wandering_do_not_hang(double width)
    {
        const int outlets = 5_000;
        var label = NameplateReader.Read("9V 20mA");
        var rig = new Rig
        {
            Name = "large",
            Loads = [.. Enumerable.Range(0, 2 * outlets).Select(index => new Load { Id = $"L{index}", Label = label })],
            Supplies = [new Supply { Id = "s", Outlets = [.. Enumerable.Range(0, outlets).Select(index => new Outlet { Id = $"{index}", Label = NameplateReader.Read("9 V 100 mA") })] }],

            // Each load is on two feeds, the second far from the first.
            Wired = new ValueList<Feed>([.. Enumerable.Range(0, outlets).Select(index => new Feed { From = [new OutletRef("s", $"{index}")], To = [$"L{2 * index}", $"L{(2 * index) + 1}", $"L{index * 7 % (2 * outlets)}"] }).Select(feed => feed with { To = [.. feed.To.Items.Distinct(StringComparer.Ordinal)] })]),
        };
        var check = NameplateCheck.Of(rig);
        var clock = Stopwatch.StartNew();
        var scene = RigDiagram.Draw(rig, check, new DiagramOptions { Width = width });
        Assert.True(clock.Elapsed.TotalSeconds < 30, $"took {clock.Elapsed}");
        Assert.Equal(2 * outlets, scene.Groups.Count(group => group.Kind == SubjectKind.Load));
        SceneAssert.NothingLeaves(scene);
    }

    [Fact]
    public void A_check_of_another_rig_is_refused()
    {
        var check = NameplateCheck.Of(Rigs.Example("pit.rig.yaml"));
        Assert.Throws<ArgumentException>(() => RigDiagram.Draw(Rigs.Example("festival.rig.yaml"), check));
    }

    private static DiagramValues ReadingsOf(Rig rig, CheckResult check) => new()
    {
        Outlets = check.Outlets.Items.ToDictionary(outlet => outlet.Outlet.ToString(), outlet => new OutletValues(outlet.Run ?? new Amps(0.1234m), "limiting"), StringComparer.Ordinal),
        Loads = rig.Loads.Items.ToDictionary(load => load.Id, _ => new LoadValues(new Volts(8.93m), "runs"), StringComparer.Ordinal),
    };

    private static IEnumerable<string> SubjectsOf(Scene scene, SubjectKind kind) =>
        scene.Groups.Where(group => group.Kind == kind).Select(group => group.Subject).Order(StringComparer.Ordinal);
}
