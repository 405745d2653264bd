using System.Text;

namespace Loadmark.Drawing.Fonts;

/// <summary>
/// The typeface of paper, shipped with the program so that a sheet looks alike everywhere: letters of Latin, Greek and Cyrillic, and every
/// sign that a sheet says, ⎓ and ⏦ among them (<c>tools/fonts/make</c>).
/// </summary>
public static class PaperFonts
{
    /// <summary>What the family is called in files.</summary>
    public const string Family = "Loadmark Sans";

    private static readonly Lazy<FontFace> LazyRegular = new(static () => FontFace.Read("LoadmarkSans-Regular"));
    private static readonly Lazy<FontFace> LazyBold = new(static () => FontFace.Read("LoadmarkSans-Bold"));

    /// <summary>The upright face of common weight.</summary>
    public static FontFace Regular => LazyRegular.Value;

    /// <summary>The bold face; it has the same characters.</summary>
    public static FontFace Bold => LazyBold.Value;

    /// <summary>One of the two.</summary>
    public static FontFace Of(bool isBold) => isBold ? Bold : Regular;

    /// <summary>The characters of a text that the typeface lacks, each once, in order; they show as boxes.</summary>
    public static IEnumerable<Rune> MissingIn(string text) =>
        text.EnumerateRunes().Where(static rune => !Regular.Has(rune)).Distinct();
}
