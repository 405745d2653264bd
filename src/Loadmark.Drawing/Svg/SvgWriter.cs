using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Xml;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Svg;

/// <summary>Writes a scene as SVG 1.1: no script, no reference to anything outside it.</summary>
public static class SvgWriter
{
    private const string Space = "http://www.w3.org/2000/svg";

    private static readonly string[] InkClasses = [.. Enum.GetNames<Ink>().Select(static name => $"ink-{Kebab(name)}")];
    private static readonly string[] RoleClasses = [.. Enum.GetNames<TextRole>().Select(static name => $"role-{Kebab(name)}")];

    /// <summary>The class that shapes of an ink have: <c>ink-gauge-run</c>.</summary>
    public static string ClassOf(Ink ink) => InkClasses[(int)ink];

    /// <summary>The class that texts of a role have: <c>role-small</c>.</summary>
    public static string ClassOf(TextRole role) => RoleClasses[(int)role];

    /// <summary>All classes of a shape, as <see cref="Write(Scene, SvgStyle)"/> gives them.</summary>
    public static string ClassesOf(Shape shape)
    {
        var classes = ClassOf(shape.Ink);
        if (shape.Ink is Ink.SeriesLine or Ink.SeriesPoint or Ink.SeriesText or Ink.Band)
            classes += $" variant-{shape.Variant.ToString(CultureInfo.InvariantCulture)}";
        if (shape is PathShape { Closed: false })
            classes += " open";
        return shape is TextShape text ? $"{classes} {ClassOf(text.Role)}" : classes;
    }

    /// <summary>Writes a scene. Whatever its texts hold, the result is well-formed.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="style">What its inks look like.</param>
    /// <returns>The SVG document without an XML declaration, so that it can stand in a page as well.</returns>
    public static string Write(Scene scene, SvgStyle style) => Write(scene, style, $"{Number(scene.Width)}", $"{Number(scene.Height)}");

    /// <summary>Writes pages under one another, in millimetres, complete in itself.</summary>
    /// <param name="document">The pages.</param>
    /// <returns>The SVG document without an XML declaration.</returns>
    public static string Write(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var stack = PageStack.Of(document);
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        foreach (var (page, top) in stack.Pages)
        {
            foreach (var part in page.All().Where(static part => part.Shapes.Length > 0))
                groups.Add(new SceneGroup
                {
                    Key = $"part {groups.Count + 1}",
                    Kind = SubjectKind.Decoration,
                    Title = part.Alternative,
                    Shapes = [.. part.Shapes.Select(shape => PlacedShape.Of(shape, 1, 0, top))],
                    Bounds = part.Bounds,
                });
        }

        var scene = new Scene
        {
            Width = stack.Width,
            Height = stack.Height,
            Title = document.Title,
            Description = document.Subject,
            Groups = groups.ToImmutable(),
        };
        return Write(scene, SvgStyle.Print, Millimetres(scene.Width), Millimetres(scene.Height));

        static string Millimetres(double px) => $"{Number(px / PaperSize.PxPerMm)}mm";
    }

    private static string Write(Scene scene, SvgStyle style, string width, string height)
    {
        var text = new StringBuilder();
        var settings = new XmlWriterSettings
        {
            OmitXmlDeclaration = true,
            Indent = true,
            IndentChars = " ",
            NewLineChars = "\n",
            NewLineHandling = NewLineHandling.None,
        };
        using (var xml = XmlWriter.Create(text, settings))
        {
            xml.WriteStartElement("svg", Space);
            xml.WriteAttributeString("class", "scene");
            xml.WriteAttributeString("width", width);
            xml.WriteAttributeString("height", height);
            xml.WriteAttributeString("viewBox", $"0 0 {Number(scene.Width)} {Number(scene.Height)}");
            xml.WriteAttributeString("role", "img");
            xml.WriteElementString("title", Space, XmlText(scene.Title));
            xml.WriteElementString("desc", Space, XmlText(scene.Description));
            if (style.Css.Length > 0)
            {
                xml.WriteElementString("style", Space, style.Css);
                WriteSheet(xml, scene);
            }

            foreach (var group in scene.Groups)
                Write(xml, group);
            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    internal static string Kebab(string name)
    {
        var kebab = new StringBuilder();
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterUpper(letter) && kebab.Length > 0)
                kebab.Append('-');
            kebab.Append(char.ToLowerInvariant(letter));
        }

        return kebab.ToString();
    }

    /// <summary>The sheet beneath, where the picture does not stand on a page that has its own.</summary>
    private static void WriteSheet(XmlWriter xml, Scene scene)
    {
        xml.WriteStartElement("rect", Space);
        xml.WriteAttributeString("class", "sheet");
        xml.WriteAttributeString("width", Number(scene.Width));
        xml.WriteAttributeString("height", Number(scene.Height));
        xml.WriteEndElement();
    }

    private static void Write(XmlWriter xml, SceneGroup group)
    {
        xml.WriteStartElement("g", Space);
        xml.WriteAttributeString(
            "class", $"kind-{Kebab(group.Kind.ToString())}{(group.Severity is { } worst ? $" severity-{Kebab(worst.ToString())}" : "")}");
        xml.WriteAttributeString("data-key", XmlText(group.Key));
        if (group.Subject.Length > 0)
            xml.WriteAttributeString("data-subject", XmlText(group.Subject));
        if (group.Title.Length > 0)
            xml.WriteElementString("title", Space, XmlText(group.Title));
        foreach (var shape in group.Shapes)
            Write(xml, shape);
        xml.WriteEndElement();
    }

    private static void Write(XmlWriter xml, Shape shape)
    {
        switch (shape)
        {
            case LineShape line:
                Start(xml, "line", shape, ("x1", line.From.X), ("y1", line.From.Y), ("x2", line.To.X), ("y2", line.To.Y));
                break;
            case RectShape { Box: var box } rect:
                Start(xml, "rect", shape, ("x", box.X), ("y", box.Y), ("width", box.Width), ("height", box.Height));
                if (rect.Corner > 0)
                    xml.WriteAttributeString("rx", Number(rect.Corner));
                break;
            case CircleShape circle:
                Start(xml, "circle", shape, ("cx", circle.Centre.X), ("cy", circle.Centre.Y), ("r", circle.Radius));
                break;
            case PathShape path:
                Start(xml, path.Closed ? "polygon" : "polyline", shape);
                xml.WriteAttributeString(
                    "points", string.Join(' ', path.Points.Select(static point => $"{Number(point.X)},{Number(point.Y)}")));
                break;
            case TextShape text:
                Start(xml, "text", shape, ("x", text.X), ("y", text.Y));
                if (text.Anchor != TextAnchor.Start)
                    xml.WriteAttributeString("text-anchor", text.Anchor == TextAnchor.Middle ? "middle" : "end");
                if (text.OwnSize is { } size)
                    WriteOwnSize(xml, text, size);
                xml.WriteString(XmlText(text.Text));
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(shape), shape, "No such shape can be written.");
        }

        xml.WriteEndElement();
    }

    /// <summary>
    /// Text of paper has the size and the width that it was set with: another typeface is drawn narrower or wider to fit, and nothing
    /// runs into its neighbour.
    /// </summary>
    private static void WriteOwnSize(XmlWriter xml, TextShape text, double size)
    {
        xml.WriteAttributeString("style", $"font-size:{Number(size)}px");
        xml.WriteAttributeString("textLength", Number(PaperFonts.Of(TextWidth.IsBold(text.Ink)).WidthOf(text.Text, size)));
        xml.WriteAttributeString("lengthAdjust", "spacingAndGlyphs");
    }

    private static void Start(XmlWriter xml, string element, Shape shape, params ReadOnlySpan<(string Name, double Value)> attributes)
    {
        xml.WriteStartElement(element, Space);
        xml.WriteAttributeString("class", ClassesOf(shape));
        foreach (var (name, value) in attributes)
            xml.WriteAttributeString(name, Number(value));
    }

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>The text without what XML 1.0 does not allow in any form.</summary>
    private static string XmlText(string text)
    {
        for (var index = 0; index < text.Length; index++)
        {
            if (!IsAllowed(text, index))
                return Strip(text);
        }

        return text;
    }

    private static string Strip(string text)
    {
        var safe = new StringBuilder(text.Length);
        for (var index = 0; index < text.Length; index++)
        {
            if (IsAllowed(text, index))
                safe.Append(text[index]);
        }

        return safe.ToString();
    }

    private static bool IsAllowed(string text, int index) => char.IsHighSurrogate(text[index])
        ? index + 1 < text.Length && char.IsLowSurrogate(text[index + 1])
        : char.IsLowSurrogate(text[index]) ? index > 0 && char.IsHighSurrogate(text[index - 1]) : XmlConvert.IsXmlChar(text[index]);
}
