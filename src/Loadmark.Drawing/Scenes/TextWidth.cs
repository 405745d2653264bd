using System.Text;

namespace Loadmark.Drawing.Scenes;

/// <summary>
/// How wide a text is at most. No font is at hand where a scene is made, so the widths of DejaVu Sans stand in, which is
/// among the widest of the common typefaces without serifs: in others the text ends sooner.
/// </summary>
/// <remarks>
/// Measured here: the advance widths in DejaVuSans.ttf and DejaVuSans-Bold.ttf 2.37, rounded up to a thousandth of the
/// size. Other characters are taken as wide as the widest of their kind in that font, or wider.
/// </remarks>
public static class TextWidth
{
    private const int Latin = 1_000;
    private const int Other = 1_500;
    private const int Huge = 16_000;

    private static readonly short[] Ascii =
    [
        318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337, 637, 637, 637, 637, 637, 637, 637, 637,
        637, 637, 337, 337, 838, 838, 838, 531, 1000, 685, 687, 699, 771, 632, 576, 775, 752, 295, 295, 656, 558, 863, 749, 788,
        604, 788, 695, 635, 611, 732, 685, 989, 686, 611, 686, 391, 337, 391, 838, 500, 500, 613, 635, 550, 635, 616, 353, 635,
        634, 278, 278, 580, 278, 975, 634, 612, 635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637, 337, 637, 838,
    ];

    private static readonly short[] BoldAscii =
    [
        349, 457, 521, 838, 696, 1002, 873, 307, 458, 458, 523, 838, 380, 416, 380, 366, 696, 696, 696, 696, 696, 696, 696, 696,
        696, 696, 400, 400, 838, 838, 838, 581, 1000, 774, 763, 734, 831, 684, 684, 821, 837, 373, 373, 775, 638, 996, 837, 851,
        733, 851, 771, 721, 683, 813, 774, 1104, 771, 725, 726, 458, 366, 458, 838, 500, 500, 675, 716, 593, 716, 679, 436, 716,
        712, 343, 343, 666, 343, 1042, 712, 688, 716, 716, 494, 596, 479, 712, 652, 924, 646, 652, 583, 712, 366, 712, 838,
    ];

    /// <summary>The size of a text in px.</summary>
    public static double SizeOf(TextRole role) => role switch
    {
        TextRole.Heading => 14,
        TextRole.Body => 12,
        _ => 11,
    };

    /// <summary>Whether text of this ink is bold.</summary>
    public static bool IsBold(Ink ink) =>
        ink is Ink.TextStrong or Ink.TextReading or Ink.SeriesText or (>= Ink.SignHarm and <= Ink.SignGood);

    /// <summary>The width in px that a text takes at most.</summary>
    public static double Of(string text, TextRole role, bool isBold)
    {
        var thousandths = 0L;
        foreach (var rune in text.EnumerateRunes())
            thousandths += Of(rune, isBold);
        return thousandths * SizeOf(role) / 1000;
    }

    /// <summary>The width of a character in thousandths of the size.</summary>
    internal static int Of(Rune rune, bool isBold) => rune.Value switch
    {
        >= ' ' and <= '~' => (isBold ? BoldAscii : Ascii)[rune.Value - ' '],
        '·' => 380,
        '…' or '—' or '→' => 1_000,
        (>= 0xA0 and < 0x180) or (>= 0x391 and <= 0x3C9) or (>= 0x2010 and <= 0x2022) or (>= 0x2190 and <= 0x23FF) => isBold
            ? Latin + 100
            : Latin,
        // Ligatures of whole phrases, dashes of several ems, cuneiform and hieroglyphs.
        (>= 0xFB50 and <= 0xFDFF) or (>= 0x12000 and <= 0x1345F) or 0x2E3A or 0x2E3B or (>= 0xA980 and <= 0xA9DF) => Huge,
        (>= 0x1400 and <= 0x169F) or (>= 0x1F1E6 and <= 0x1F1FF) => 2_100,
        _ => Other,
    };
}
