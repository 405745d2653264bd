using System.Globalization;
using Loadmark.Core.Checks;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Svg;
using Loadmark.Drawing.Texts;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;

namespace Loadmark.Web.Parts;

/// <summary>
/// A scene as SVG on the page. One picture to who does not see it, with the scene's description; what can be done by pointing at its parts
/// can be done elsewhere on the page by keyboard as well.
/// </summary>
public sealed class SceneView : ComponentBase
{
    private Scene? _rendered;
    private (IReadOnlySet<string>? Lit, string? Picked, IReadOnlyDictionary<string, string>? Warned) _state;

    /// <summary>The scene to draw.</summary>
    [Parameter, EditorRequired] public Scene Scene { get; set; } = null!;

    /// <summary>The ids that are lit; null for none.</summary>
    [Parameter] public IReadOnlySet<string>? Lit { get; set; }

    /// <summary>The id that is picked; null for none.</summary>
    [Parameter] public string? Picked { get; set; }

    /// <summary>Ids that are warned of when they are chosen, with the reason.</summary>
    [Parameter] public IReadOnlyDictionary<string, string>? Warned { get; set; }

    /// <summary>Told when a part is clicked.</summary>
    [Parameter] public EventCallback<SceneGroup> OnPick { get; set; }

    /// <inheritdoc/>
    protected override bool ShouldRender()
    {
        var state = (Lit, Picked, Warned);
        if (ReferenceEquals(_rendered, Scene) && state == _state)
            return false;
        (_rendered, _state) = (Scene, state);
        return true;
    }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        (_rendered, _state) = (Scene, (Lit, Picked, Warned));
        builder.OpenElement(0, "svg");
        builder.AddAttribute(1, "class", Lit is { Count: > 0 } ? "scene has-lit" : "scene");
        builder.AddAttribute(2, "viewBox", $"0 0 {Number(Scene.Width)} {Number(Scene.Height)}");
        builder.AddAttribute(3, "width", Number(Scene.Width));
        builder.AddAttribute(4, "height", Number(Scene.Height));
        builder.AddAttribute(5, "role", "img");
        builder.AddAttribute(6, "aria-label", $"{Scene.Title}. {Scene.Description}");
        foreach (var group in Scene.Groups)
            Draw(builder, group);
        builder.CloseElement();
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Points(IEnumerable<Point> points) =>
        string.Join(' ', points.Select(static point => $"{Number(point.X)},{Number(point.Y)}"));

    private void Draw(RenderTreeBuilder builder, SceneGroup group)
    {
        var canBePicked = OnPick.HasDelegate && group.Kind is not SubjectKind.Decoration && group.Subject.Length > 0;
        builder.OpenElement(10, "g");
        builder.SetKey(group.Key);
        builder.AddAttribute(11, "class", ClassOf(group, canBePicked));
        if (group.Subject.Length > 0)
            builder.AddAttribute(12, "data-subject", group.Subject);
        if (canBePicked)
            builder.AddAttribute(13, "onclick", EventCallback.Factory.Create<MouseEventArgs>(this, () => OnPick.InvokeAsync(group)));
        var title = Warned is not null && Warned.TryGetValue(group.Subject, out var warning) ? warning : group.Title;
        if (title.Length > 0)
        {
            builder.OpenElement(14, "title");
            builder.AddContent(15, SafeText.Clean(title));
            builder.CloseElement();
        }

        if (canBePicked)
        {
            builder.OpenElement(16, "rect");
            builder.AddAttribute(17, "class", "hit");
            Place(builder, group.Bounds);
            builder.AddAttribute(22, "rx", "4");
            builder.CloseElement();
        }

        foreach (var shape in group.Shapes)
            Draw(builder, shape);
        builder.CloseElement();
    }

    private string ClassOf(SceneGroup group, bool canBePicked)
    {
        var names = $"part part-{group.Kind.ToString().ToLowerInvariant()}";
        if (canBePicked)
            names += " can-pick";
        if (group.Severity is { } severity && severity > Severity.Good)
            names += $" {severity.Class()}";
        if (Lit?.Contains(group.Subject) == true)
            names += " lit";
        if (group.Subject.Length > 0 && group.Subject == Picked)
            names += " picked";
        if (Warned?.ContainsKey(group.Subject) == true)
            names += " warned";
        return names;
    }

    private static void Place(RenderTreeBuilder builder, Box box)
    {
        builder.AddAttribute(18, "x", Number(box.X));
        builder.AddAttribute(19, "y", Number(box.Y));
        builder.AddAttribute(20, "width", Number(box.Width));
        builder.AddAttribute(21, "height", Number(box.Height));
    }

    private static void Draw(RenderTreeBuilder builder, Shape shape)
    {
        switch (shape)
        {
            case LineShape line:
                builder.OpenElement(30, "line");
                builder.AddAttribute(31, "class", SvgWriter.ClassesOf(line));
                builder.AddAttribute(32, "x1", Number(line.From.X));
                builder.AddAttribute(33, "y1", Number(line.From.Y));
                builder.AddAttribute(34, "x2", Number(line.To.X));
                builder.AddAttribute(35, "y2", Number(line.To.Y));
                break;
            case RectShape rect:
                builder.OpenElement(40, "rect");
                builder.AddAttribute(41, "class", SvgWriter.ClassesOf(rect));
                Place(builder, rect.Box);
                if (rect.Corner > 0)
                    builder.AddAttribute(42, "rx", Number(rect.Corner));
                break;
            case PathShape path:
                builder.OpenElement(50, path.Closed ? "polygon" : "polyline");
                builder.AddAttribute(51, "class", SvgWriter.ClassesOf(path));
                builder.AddAttribute(52, "points", Points(path.Points));
                break;
            case CircleShape circle:
                builder.OpenElement(60, "circle");
                builder.AddAttribute(61, "class", SvgWriter.ClassesOf(circle));
                builder.AddAttribute(62, "cx", Number(circle.Centre.X));
                builder.AddAttribute(63, "cy", Number(circle.Centre.Y));
                builder.AddAttribute(64, "r", Number(circle.Radius));
                break;
            case TextShape text:
                builder.OpenElement(70, "text");
                builder.AddAttribute(71, "class", SvgWriter.ClassesOf(text));
                builder.AddAttribute(72, "x", Number(text.X));
                builder.AddAttribute(73, "y", Number(text.Y));
                if (text.Anchor != TextAnchor.Start)
                    builder.AddAttribute(74, "text-anchor", text.Anchor == TextAnchor.Middle ? "middle" : "end");
                builder.AddContent(75, text.Text);
                break;
            default:
                throw new ArgumentException($"There is no way to draw a {shape.GetType().Name}.", nameof(shape));
        }

        builder.CloseElement();
    }
}
