using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Workshop.Tests.Sheets;

/// <summary>What holds for every page of paper.</summary>
internal static class PageAssert
{
    private const double Tolerance = 0.02;

    /// <summary>Nothing runs off the page or out of the part that it stands in, and no two parts side by side overlap.</summary>
    public static void IsSound(PaperDocument document)
    {
        Assert.NotEmpty(document.Pages);
        foreach (var page in document.Pages)
        {
            var sheet = new Box(0, 0, page.Size.Width, page.Size.Height);
            Holds(sheet, page.Parts);
        }
    }

    /// <summary>The box of a text as it is drawn: by the widths of the typeface itself.</summary>
    public static Box BoxOf(TextShape text)
    {
        var width = PaperFonts.Of(TextWidth.IsBold(text.Ink)).WidthOf(text.Text, text.Size);
        return new Box(text.X - (width * text.ShareBefore), text.Y - (0.75 * text.Size), width, text.Size);
    }

    private static void Holds(Box around, IReadOnlyList<PaperPart> parts)
    {
        for (var one = 0; one < parts.Count; one++)
        {
            var part = parts[one];
            Assert.True(around.Grow(Tolerance).Holds(part.Bounds), $"{part.Tag} at {part.Bounds} in {around}");
            foreach (var text in part.Shapes.OfType<TextShape>())
                Assert.True(part.Bounds.Grow(1).Holds(BoxOf(text)), $"'{text.Text}' at {BoxOf(text)} in {part.Tag} at {part.Bounds}");
            for (var other = one + 1; other < parts.Count; other++)
            {
                if (part.Tag != PaperTag.Artifact && parts[other].Tag != PaperTag.Artifact)
                    Assert.False(
                        part.Bounds.Grow(-Tolerance).Overlaps(parts[other].Bounds), $"{part.Tag} at {part.Bounds} and {parts[other].Tag} at {parts[other].Bounds}");
            }

            Holds(part.Bounds, part.Parts);
        }
    }
}
