using Bunit;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Scenes;
using Loadmark.Web.Parts;

namespace Loadmark.Web.Tests.Parts;

/// <summary>The diagram as SVG on the page.</summary>
public sealed class SceneViewTests : PageTest
{
    [Fact]
    public async Task What_is_lit_picked_or_warned_of_has_its_class_and_its_reason()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Draw(RigDiagram.Draw(view.Rig, view.Check, new DiagramOptions { Width = 900 }), scene => scene
            .Add(one => one.Lit, new HashSet<string> { "drive-3" })
            .Add(one => one.Picked, "brick/3")
            .Add(one => one.Warned, new Dictionary<string, string> { ["preamp-2"] = "It is made for 18 V." }));

        Assert.Equal(["drive-3"], Subjects(part, "lit"));
        Assert.Equal(["brick/3"], Subjects(part, "picked"));
        Assert.Equal(["preamp-2"], Subjects(part, "warned"));
        Assert.Equal("It is made for 18 V.", part.Find("g.warned > title").TextContent);
        Assert.Contains("has-lit", part.Find("svg").ClassList);
        Assert.Contains("sev-fails", part.Find("g[data-subject='preamp-2'].part-load").ClassList); // unfed
    }

    [Fact]
    public async Task It_is_one_picture_with_a_description()
    {
        var view = await OpenAsync(SmallRig.Text);
        var scene = RigDiagram.Draw(view.Rig, view.Check, new DiagramOptions { Width = 900 });
        var svg = Draw(scene).Find("svg");
        Assert.Equal("img", svg.GetAttribute("role"));
        Assert.Contains(scene.Description, svg.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.StartsWith("0 0 ", svg.GetAttribute("viewBox"), StringComparison.Ordinal);
        Assert.DoesNotContain("has-lit", svg.ClassList);
    }

    [Fact]
    public async Task A_part_that_is_clicked_is_told_and_only_where_somebody_listens()
    {
        var view = await OpenAsync(SmallRig.Text);
        var scene = RigDiagram.Draw(view.Rig, view.Check, new DiagramOptions { Width = 900 });
        Assert.Empty(Draw(scene).FindAll(".can-pick, .hit"));
        var picked = new List<string>();
        var part = Draw(scene, more => more.Add(one => one.OnPick, group => picked.Add(group.Subject)));
        part.Find("g[data-subject='brick/3'].can-pick").Click();
        Assert.Equal(["brick/3"], picked);
    }

    [Fact]
    public async Task Hostile_names_are_text()
    {
        const string Name = "\"><script>x()</script>";
        var view = await OpenAsync(SmallRig.Text.Replace("delay-2", "'" + Name + "'", StringComparison.Ordinal));
        var part = Draw(RigDiagram.Draw(view.Rig, view.Check, new DiagramOptions { Width = 900 }), scene => scene.Add(one => one.Lit, new HashSet<string> { Name }));
        Assert.Empty(part.FindAll("script"));
        Assert.Contains(Name, part.FindAll("g").Select(group => group.GetAttribute("data-subject")));
        Assert.Contains(part.FindAll("text"), text => text.TextContent.Contains("<script>", StringComparison.Ordinal));
        Assert.Equal([Name], Subjects(part, "lit"));
    }

    [Fact]
    public async Task The_diagram_draws_itself_at_the_width_it_is_told()
    {
        var view = await OpenAsync(SmallRig.Text);
        var part = Show<RigDrawing>(view);
        Assert.Empty(part.FindAll("svg.scene"));
        await part.FindComponent<RigDrawing>().Instance.SetWidthAsync(390);
        var narrow = part.Find("svg.scene").GetAttribute("width");
        await part.FindComponent<RigDrawing>().Instance.SetWidthAsync(1000);
        Assert.NotEqual(narrow, part.Find("svg.scene").GetAttribute("width"));

        // Picked in the diagram, those that are warned of show in it.
        view.Pick(new Core.Rigs.OutletRef("brick", "3"));
        part.WaitForAssertion(() => Assert.Contains("preamp-2", part.FindAll("g.warned").Select(group => group.GetAttribute("data-subject"))));
        view.Pick(null);
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("g.warned")));
    }

    private static IEnumerable<string?> Subjects(IRenderedComponent<SceneView> part, string name) =>
        part.FindAll($"g.{name}").Select(group => group.GetAttribute("data-subject")).Distinct();

    private IRenderedComponent<SceneView> Draw(Scene scene, Action<ComponentParameterCollectionBuilder<SceneView>>? more = null) => Render<SceneView>(parameters =>
    {
        parameters.Add(one => one.Scene, scene);
        more?.Invoke(parameters);
    });
}
