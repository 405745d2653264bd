using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Tests;

/// <summary>The diagram for paper, which nobody can point at: told in full, on as many pages as it takes.</summary>
public sealed class WholeDiagramTests
{
    private static readonly DiagramOptions Whole = new() { Width = 820, TellsAll = true };

    public static TheoryData<string> Files() => [.. Rigs.ExampleFiles];

    [Theory]
    [MemberData(nameof(Files))]
    public void Examples_are_drawn_soundly_and_in_full(string file)
    {
        var rig = Rigs.Example(file);
        foreach (var width in (double[])[640, 820, 900])
        {
            var scene = RigDiagram.Draw(rig, NameplateCheck.Of(rig), Whole with { Width = width });
            SceneAssert.IsSound(scene);
            Assert.DoesNotContain(TextsOf(scene.Groups), static text => text.Contains('…', StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Random_rigs_with_hostile_names_are_drawn_soundly() => Rigs.Random.Sample(
        static rig =>
        {
            foreach (var scene in Pages(rig, 1000))
                SceneAssert.IsSound(scene);
        },
        iter: 60);

    [Fact]
    public void Boxes_of_things_never_overlap() => Rigs.Random.Sample(
        static rig =>
        {
            foreach (var scene in Pages(rig, 1000))
            {
                var boxes = scene.Groups.Where(static group => group.Kind is SubjectKind.Supply or SubjectKind.Outlet or SubjectKind.Load)
                    .Select(static group => group.Bounds).ToList();
                for (var one = 0; one < boxes.Count; one++)
                {
                    for (var other = one + 1; other < boxes.Count; other++)
                        Assert.False(boxes[one].Overlaps(boxes[other]));
                }
            }
        },
        iter: 60);

    /// <summary>Every text stands within the box of the thing that it is said of.</summary>
    [Fact]
    public void Texts_of_boxes_stay_within_them() => Rigs.Random.Sample(
        static rig =>
        {
            foreach (var group in Pages(rig, 1000).SelectMany(static scene => scene.Groups)
                .Where(static group => group.Kind is SubjectKind.Outlet or SubjectKind.Load or SubjectKind.Supply))
            {
                foreach (var text in group.Shapes.OfType<TextShape>().Where(static text => text.Text != "?"))
                    Assert.True(group.Bounds.Grow(1).Holds(text.Box), $"{Rigs.Escaped(text.Text)} at {text.Box} in {group.Bounds}");
            }
        },
        iter: 60);

    [Theory]
    [InlineData(1e9)]
    [InlineData(700)]
    [InlineData(260)]
    public void Everything_of_a_random_rig_is_in_the_pictures_once(double height) => Rigs.Random.Sample(
        rig =>
        {
            var groups = Pages(rig, height).SelectMany(static scene => scene.Groups).ToList();
            Assert.Equal(rig.Loads.Items.Select(static load => load.Id).Order(StringComparer.Ordinal), SubjectsOf(groups, SubjectKind.Load));
            Assert.Equal(
                rig.Supplies.Items.SelectMany(static supply => supply.Outlets.Items.Select(outlet => $"{supply.Id}/{outlet.Id}")).Order(StringComparer.Ordinal),
                SubjectsOf(groups, SubjectKind.Outlet));
            Assert.Equal(rig.Supplies.Items.Select(static supply => supply.Id).Order(StringComparer.Ordinal), SubjectsOf(groups, SubjectKind.Supply).Distinct(StringComparer.Ordinal));
            Assert.Equal(rig.Wired?.Count ?? 0, groups.Count(static group => group.Kind == SubjectKind.Lead));
        },
        iter: 60);

    [Fact]
    public void A_page_is_as_high_as_it_may_be_but_for_single_rows_that_are_higher()
    {
        var rig = Rigs.Example("festival.rig.yaml");
        foreach (var height in (double[])[420, 700, 1100, 5000])
        {
            var pages = Pages(rig, height);
            Assert.All(pages, scene => Assert.True(scene.Height <= height, $"{scene.Height} of {height}"));
            Assert.Equal(height >= 5000, pages.Count == 1);
        }
    }

    /// <summary>A name is read whole whatever its length: what is said in one line elsewhere takes as many as it needs.</summary>
    [Fact]
    public void A_long_name_is_wrapped_whole()
    {
        var name = string.Join(' ', Enumerable.Range(100, 60));
        var lead = name[..60].Trim();
        var (rig, check) = Rigs.Checked(
            $"rig: A\nloads:\n  x: {{ name: \"{name}\", label: \"9V 20mA\" }}\nsupplies:\n  s: {{ name: \"{name}\", outlets: {{ 1: 9V 1A }} }}\n"
            + $"leads:\n  \"{lead}\": {{ type: reversing }}\nwired:\n  - {{ from: s/1, lead: \"{lead}\", to: x }}\n");
        var scene = RigDiagram.Draw(rig, check, Whole);
        SceneAssert.IsSound(scene);
        foreach (var kind in (SubjectKind[])[SubjectKind.Load, SubjectKind.Supply, SubjectKind.Lead])
        {
            var words = string.Join(' ', TextsOf(scene.Groups.Where(group => group.Kind == kind)));
            Assert.Contains(kind == SubjectKind.Lead ? lead : name, words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_lead_that_joins_more_than_a_page_holds_says_where_it_goes_on()
    {
        var outlets = string.Join(", ", Enumerable.Range(1, 12).Select(static id => $"{id}: 9V DC 100mA centre negative"));
        var (rig, check) = Rigs.Checked(
            $"rig: A\nloads:\n  x: {{ label: \"9V DC 1A centre negative\" }}\nsupplies:\n  s: {{ isolated: true, outlets: {{ {outlets} }} }}\nleads:\n  wide: {{ type: parallel }}\n"
            + "wired:\n  - { from: [s/1, s/12], joined: parallel, lead: wide, to: x }\n");
        var pages = RigDiagram.DrawPages(WiredRig.Of(rig), check, Whole, 300);
        Assert.True(pages.Count > 1);
        Assert.Contains("also on another page: s/12", string.Join(' ', TextsOf(pages[0].Groups)), StringComparison.Ordinal);
        Assert.DoesNotContain(
            TextsOf(RigDiagram.Draw(rig, check, Whole).Groups), static text => text.Contains("another page", StringComparison.Ordinal));
    }

    private static IReadOnlyList<Scene> Pages(Rig rig, double height) =>
        RigDiagram.DrawPages(WiredRig.Of(rig), NameplateCheck.Of(rig), Whole, height);

    private static IEnumerable<string> SubjectsOf(IEnumerable<SceneGroup> groups, SubjectKind kind) =>
        groups.Where(group => group.Kind == kind).Select(static group => group.Subject).Order(StringComparer.Ordinal);

    private static IEnumerable<string> TextsOf(IEnumerable<SceneGroup> groups) =>
        groups.SelectMany(static group => group.Shapes).OfType<TextShape>().Select(static text => text.Text);
}
