using CsCheck;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Inks;
using Loadmark.Drawing.Svg;

namespace Loadmark.Drawing.Tests;

/// <summary>What is written is sound SVG, whatever stands in it.</summary>
public sealed class SvgWriterTests
{
    [Fact]
    public void Text_of_any_kind_never_becomes_markup() => Rigs.HostileText.Sample(
        static text =>
        {
            var scene = Scene(new TextShape(Ink.Text, 1, 2, text), text);
            var root = SceneAssert.IsSoundSvg(SvgWriter.Write(scene, SvgStyle.Paper));
            Assert.Single(root.Descendants(), element => element.Name.LocalName == "text");
            Assert.DoesNotContain(root.Descendants(), element => element.Name.LocalName == "script");
        },
        iter: 500);

    [Fact]
    public void What_XML_allows_is_kept()
    {
        const string text = "<b> & \"quoted\" 'it' Ω 🎸 ]]> 長";
        var root = SceneAssert.IsSoundSvg(SvgWriter.Write(Scene(new TextShape(Ink.Text, 1, 2, text), text), SvgStyle.Paper));
        Assert.Equal(text, Assert.Single(root.Descendants(), element => element.Name.LocalName == "text").Value);
        Assert.Equal(text, Assert.Single(root.Descendants(), element => element.Name.LocalName == "g").Attribute("data-key")!.Value);
    }

    [Fact]
    public void Every_ink_has_a_class_and_a_rule()
    {
        var classes = Enum.GetValues<Ink>().Select(SvgWriter.ClassOf).ToList();
        Assert.Equal(classes.Count, classes.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal("ink-gauge-run", SvgWriter.ClassOf(Ink.GaugeRun));
        foreach (var style in (string[])[SvgStyle.Paper.Css, SvgStyle.Dark.Css, SvgStyle.PageCss("[data-theme=dark]")])
            Assert.All(classes, name => Assert.Contains($".{name}{{", style, StringComparison.Ordinal));
    }

    [Fact]
    public void The_lines_of_a_plot_differ_in_their_dashes() =>
        Assert.Equal(Shape.Variants, Enumerable.Range(0, Shape.Variants).Select(variant => Dashes(variant)).Distinct(StringComparer.Ordinal).Count());

    [Fact]
    public void A_page_has_its_own_rules_and_properties_for_both_lights()
    {
        var css = SvgStyle.PageCss("[data-theme=dark]");
        Assert.Contains("--tone-run:" + Palette.Light.Of(Tone.Run), css, StringComparison.Ordinal);
        Assert.Contains("--tone-run:" + Palette.Dark.Of(Tone.Run), css, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", SvgWriter.Write(Scene(new LineShape(Ink.Axis, default, default), "A"), SvgStyle.OfPage), StringComparison.Ordinal);
    }

    private static string Dashes(int variant)
    {
        var rule = SvgStyle.Paper.Css.Split('\n').Single(line => line.Contains($".ink-series-line.variant-{variant}{{", StringComparison.Ordinal));
        return rule[(rule.IndexOf("stroke-dasharray:", StringComparison.Ordinal) + 17)..].Split(';')[0];
    }

    private static Scene Scene(Shape shape, string text) => new()
    {
        Width = 100,
        Height = 50,
        Title = text,
        Description = text,
        Groups = [new SceneGroup { Key = text, Kind = SubjectKind.Load, Subject = text, Title = text, Shapes = [shape], Bounds = default }],
    };
}
