using System.Xml;
using System.Xml.Linq;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Svg;

namespace Loadmark.Drawing.Tests;

/// <summary>What holds for every picture.</summary>
internal static class SceneAssert
{
    private const double Tolerance = 0.01;

    /// <summary>No two texts overlap, nothing leaves the sheet, every key is there once, and the SVG is sound.</summary>
    public static void IsSound(Scene scene)
    {
        Assert.True(double.IsFinite(scene.Width) && double.IsFinite(scene.Height));
        Assert.NotEmpty(scene.Title);
        Assert.NotEmpty(scene.Description);
        Assert.Equal(scene.Groups.Length, scene.Groups.Select(group => group.Key).Distinct(StringComparer.Ordinal).Count());
        NothingLeaves(scene);
        NoTextsOverlap(scene);
        IsSoundSvg(SvgWriter.Write(scene, SvgStyle.Paper));
    }

    public static void NothingLeaves(Scene scene)
    {
        var sheet = new Box(0, 0, scene.Width, scene.Height).Grow(Tolerance);
        foreach (var group in scene.Groups)
        {
            Assert.True(sheet.Holds(group.Bounds), $"{Rigs.Escaped(group.Key)} reaches {group.Bounds}");
            foreach (var shape in group.Shapes)
                Assert.True(sheet.Holds(BoxOf(shape)), $"{Rigs.Escaped(group.Key)} has {shape.GetType().Name} {shape.Ink} at {BoxOf(shape)} on {scene.Width} × {scene.Height}");
        }
    }

    public static void NoTextsOverlap(Scene scene)
    {
        var texts = scene.Groups.SelectMany(group => group.Shapes.OfType<TextShape>()).OrderBy(text => text.Box.Y).ToList();
        for (var index = 0; index < texts.Count; index++)
        {
            var box = texts[index].Box.Grow(-Tolerance);
            for (var next = index + 1; next < texts.Count && texts[next].Box.Y < box.Bottom; next++)
                Assert.False(box.Overlaps(texts[next].Box), $"'{Rigs.Escaped(texts[index].Text)}' at {texts[index].Box} and '{Rigs.Escaped(texts[next].Text)}' at {texts[next].Box}");
        }
    }

    public static XElement IsSoundSvg(string svg)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, CheckCharacters = true };
        using var reader = XmlReader.Create(new StringReader(svg), settings);
        var root = XElement.Load(reader);
        Assert.Equal("svg", root.Name.LocalName);
        Assert.Equal(["title", "desc"], root.Elements().Take(2).Select(element => element.Name.LocalName));
        string[] allowed = ["svg", "title", "desc", "style", "g", "line", "rect", "circle", "polyline", "polygon", "text"];
        foreach (var element in root.DescendantsAndSelf())
        {
            Assert.Equal("http://www.w3.org/2000/svg", element.Name.NamespaceName);
            Assert.Contains(element.Name.LocalName, allowed);
            foreach (var attribute in element.Attributes().Where(attribute => !attribute.IsNamespaceDeclaration))
            {
                Assert.DoesNotContain("href", attribute.Name.LocalName, StringComparison.OrdinalIgnoreCase);
                Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name.LocalName);
                if (!attribute.Name.LocalName.StartsWith("data-", StringComparison.Ordinal))
                    Assert.DoesNotContain("NaN", attribute.Value, StringComparison.Ordinal);
            }
        }

        Assert.DoesNotContain("url(", root.Element(root.Name.Namespace + "style")?.Value ?? "", StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", root.Element(root.Name.Namespace + "style")?.Value ?? "", StringComparison.OrdinalIgnoreCase);
        return root;
    }

    private static Box BoxOf(Shape shape) => shape switch
    {
        LineShape line => Box.Between(line.From, line.To),
        RectShape rect => rect.Box,
        CircleShape circle => new Box(circle.Centre.X - circle.Radius, circle.Centre.Y - circle.Radius, 2 * circle.Radius, 2 * circle.Radius),
        PathShape path => path.Points.Select(point => new Box(point.X, point.Y, 0, 0)).Aggregate((one, other) => one.Union(other)),
        TextShape text => text.Box,
        _ => throw new InvalidOperationException(),
    };
}
