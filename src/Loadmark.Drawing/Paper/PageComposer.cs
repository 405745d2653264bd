using System.Collections.Immutable;
using System.Globalization;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Paper;

/// <summary>
/// Sets headings, text, tables and pictures one below the other and begins new pages where they need room. Nothing is shortened: text is
/// wrapped, tables go on with their headings said again.
/// </summary>
public sealed class PageComposer
{
    /// <summary>A heading within a page has so much room below it, for the headings of a table and two of its rows, px.</summary>
    private const double SubheadingRoom = 120;

    private const double MostlyFree = 0.7;

    private readonly PageFrame _frame;
    private readonly Box _body;
    private readonly List<(string Part, List<PaperPart> Body)> _pages = [];
    private string _part = "";
    private double _y;

    /// <summary>Begins an empty document.</summary>
    /// <param name="frame">What stands around each page.</param>
    public PageComposer(PageFrame frame)
    {
        _frame = frame;
        _body = frame.Body;
    }

    /// <summary>Where the body of each page is.</summary>
    public Box Body => _body;

    /// <summary>What is left of the page, px.</summary>
    public double Room => _body.Bottom - _y;

    /// <summary>Whether so little stands on the page that a part is better begun below it than on a page of its own.</summary>
    public bool IsMostlyFree => _pages.Count > 0 && Room >= MostlyFree * _body.Height;

    private List<PaperPart> Current => _pages[^1].Body;

    /// <summary>Begins a page.</summary>
    /// <param name="part">Which part of the sheet it belongs to: stands at its head.</param>
    public void BeginPage(string part)
    {
        _part = part;
        _pages.Add((part, []));
        _y = _body.Y;
    }

    /// <summary>Goes on with another part on the same page.</summary>
    /// <param name="part">Which part of the sheet it is: stands at the page's head beside the others.</param>
    public void GoOn(string part)
    {
        _part = part;
        _pages[^1] = ($"{_pages[^1].Part}, {char.ToLowerInvariant(part[0])}{part[1..]}", Current);
        Skip(10);
    }

    /// <summary>Whether there is room on the page for what is set.</summary>
    /// <param name="set">Sets it on an empty page.</param>
    public bool Fits(Action<PageComposer> set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (_pages.Count == 0)
            return false;
        var trial = new PageComposer(_frame);
        trial.BeginPage(_part);
        set(trial);
        return trial._pages.Count == 1 && trial._y - _body.Y + 10 <= Room;
    }

    /// <summary>Leaves room.</summary>
    public void Skip(double height) => _y += height;

    /// <summary>Goes on a new page where less room than this is left.</summary>
    public void Need(double height)
    {
        if (Room < height && Current.Count > 0)
            BeginPage(_part);
    }

    /// <summary>Sets the title of the whole sheet.</summary>
    public void Title(string text) => Words(PaperTag.Title, text, Ink.TextStrong, TypeSize.Title, 8);

    /// <summary>Sets a heading of a page.</summary>
    public void Heading(string text) => Words(PaperTag.Heading, text, Ink.TextStrong, TypeSize.Heading, 6);

    /// <summary>Sets a heading within a page; it never stands alone at the foot of one.</summary>
    public void Subheading(string text)
    {
        Need(SubheadingRoom);
        Words(PaperTag.Subheading, text, Ink.TextStrong, TypeSize.Subheading, 4);
    }

    /// <summary>Sets running text.</summary>
    public void Paragraph(string text, Ink ink = Ink.Text, double size = TypeSize.Body) => Words(PaperTag.Paragraph, text, ink, size, 6);

    /// <summary>Sets a picture.</summary>
    /// <param name="scene">The picture.</param>
    /// <param name="scale">How large: 1 as it was drawn.</param>
    public void Figure(Scene scene, double scale)
    {
        Need(scene.Height * scale);
        Current.Add(Placed(scene, scale, _body.X));
        _y += (scene.Height * scale) + 6;
    }

    /// <summary>Sets pictures side by side, as they were drawn.</summary>
    /// <param name="scenes">The pictures, at least one; together no wider than the body.</param>
    /// <param name="gap">What stands between them, px.</param>
    public void Figures(IReadOnlyList<Scene> scenes, double gap)
    {
        var height = scenes.Max(static scene => scene.Height);
        Need(height);
        var x = _body.X;
        foreach (var scene in scenes)
        {
            Current.Add(Placed(scene, 1, x));
            x += scene.Width + gap;
        }

        _y += height + 6;
    }

    /// <summary>Sets a table.</summary>
    public void Table(PaperTable table)
    {
        var widths = ColumnWidths.Of(table, _body.Width);
        var titles = table.Columns.Select(
            static column => new TableCell([new TableText(column.Title, Ink.TextStrong) { Size = TypeSize.Note }]));
        var header = SetRow.Of(table, [.. titles], widths);
        List<PaperPart>? rows = null;
        for (var index = 0; index < table.Rows.Length; index++)
        {
            var row = table.Rows[index];
            var rest = SetRow.Of(table, row.Cells, widths);
            var together = index + 1 < table.Rows.Length && table.Rows[index + 1].StaysWithAbove ? rest.Height : 0;
            for (SetRow? left = rest; left is not null;)
            {
                var needed = left.Height + together + (rows is null ? header.Height : 0);
                if (needed > Room && (rows is not null || Current.Count > 0) && needed <= _body.Height)
                    Break();
                else if (Room < header.Height + 40)
                    Break();
                if (rows is null)
                    Add(header, isHeader: true, Ink.Axis);
                (var fits, left) = left.Part(Room);
                Add(fits, isHeader: false, row.BeginsGroup ? Ink.Axis : Ink.Hair);
                if (left is not null)
                    Break();
            }
        }

        End();
        _y += 8;

        void Add(SetRow set, bool isHeader, Ink rule)
        {
            rows ??= [];
            rows.Add(set.At(_body.X, _y, isHeader, rule));
            _y += set.Height;
        }

        void Break()
        {
            End();
            BeginPage(_part);
        }

        void End()
        {
            if (rows is null)
                return;
            var box = rows.Select(static part => part.Bounds).Aggregate(static (one, other) => one.Union(other));
            Current.Add(new PaperPart { Tag = PaperTag.Table, Bounds = box, Parts = [.. rows] });
            rows = null;
        }
    }

    /// <summary>Adds a part that was placed by the caller; what follows stands below it.</summary>
    public void Place(PaperPart part)
    {
        Current.Add(part);
        _y = Math.Max(_y, part.Bounds.Bottom);
    }

    /// <summary>Where the next part begins, px from the upper edge of the page.</summary>
    public double Next => _y;

    /// <summary>The pages that were set.</summary>
    public ImmutableArray<PaperPage> Pages() =>
        [.. _pages.Select((page, index) => _frame.Around(
            page.Body, string.Create(CultureInfo.InvariantCulture, $"{page.Part} · page {index + 1} of {_pages.Count}")))];

    private PaperPart Placed(Scene scene, double scale, double x)
    {
        var box = new Box(x, _y, scene.Width * scale, scene.Height * scale);
        return new PaperPart
        {
            Tag = PaperTag.Figure,
            Bounds = box,
            Alternative = scene.Description,
            Shapes = [.. scene.Groups.SelectMany(static group => group.Shapes).Select(shape => PlacedShape.Of(shape, scale, box.X, box.Y))],
        };
    }

    private void Words(PaperTag tag, string text, Ink ink, double size, double after)
    {
        var face = PaperFonts.Of(TextWidth.IsBold(ink));
        var lines = WrappedText.Lay(text, face, size, _body.Width);
        var pitch = size * TypeSize.Leading;
        for (var first = 0; first < lines.Count;)
        {
            Need(Math.Min(lines.Count - first, 2) * pitch);
            var count = Math.Clamp((int)(Room / pitch), 1, lines.Count - first);
            Current.Add(new PaperPart
            {
                Tag = tag,
                Bounds = new Box(_body.X, _y, _body.Width, count * pitch),
                Shapes =
                [
                    .. lines.Skip(first).Take(count).Select((line, row) =>
                        (Shape)new TextShape(ink, _body.X, _y + (row * pitch) + (size * TypeSize.Ascent), line) { OwnSize = size }),
                ],
            });
            _y += count * pitch;
            first += count;
        }

        _y += after;
    }
}
