using System.Text;
using SkiaSharp;

namespace Loadmark.Drawing.Fonts;

/// <summary>One face of the typeface of paper: which characters it has, and how wide they are.</summary>
public sealed class FontFace
{
    /// <summary>What Skia measures glyphs at: Noto's own units, so that no width is rounded.</summary>
    private const int Units = 1000;

    private const float Lacking = -1;

    /// <summary>The characters of the basic plane; there are no others in the typeface.</summary>
    private const int Characters = 0x10000;

    private readonly float[] _advances = new float[Characters];
    private readonly float _boxAdvance;

    private FontFace(string name, byte[] bytes)
    {
        (Name, Bytes) = (name, bytes);
        using var data = SKData.CreateCopy(bytes);
        Typeface = SKTypeface.FromData(data) ?? throw new InvalidDataException($"{name} is not a font.");
        using var font = new SKFont(Typeface, Units) { Hinting = SKFontHinting.None, LinearMetrics = true, Subpixel = true };
        var characters = new int[Characters];
        for (var character = 0; character < Characters; character++)
            characters[character] = character;
        var glyphs = font.GetGlyphs(characters);
        var widths = font.GetGlyphWidths(glyphs);
        for (var character = 0; character < Characters; character++)
            _advances[character] = glyphs[character] == 0 ? Lacking : MathF.Round(widths[character]);
        _boxAdvance = MathF.Round(widths[0]);
    }

    /// <summary>The name of the face's file: "LoadmarkSans-Bold".</summary>
    public string Name { get; }

    /// <summary>The file of the face.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>The face as what draws pictures knows it; it may be used by several threads at once.</summary>
    internal SKTypeface Typeface { get; }

    /// <summary>Reads a face that the program brings with it.</summary>
    /// <exception cref="InvalidDataException">There is no such face, or it is not a font.</exception>
    internal static FontFace Read(string name)
    {
        using var stream = typeof(FontFace).Assembly.GetManifestResourceStream($"fonts/{name}")
            ?? throw new InvalidDataException($"There is no font {name}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new FontFace(name, bytes);
    }

    /// <summary>Whether the face has a character; one that it lacks is drawn as a box.</summary>
    public bool Has(Rune rune) => rune.Value < Characters && _advances[rune.Value] > Lacking;

    /// <summary>
    /// How wide a text is, in what its size is told in; a character that the face lacks is as wide as the box that stands for it.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="size">The size of the type, above 0.</param>
    public double WidthOf(ReadOnlySpan<char> text, double size)
    {
        var units = 0.0;
        foreach (var rune in text.EnumerateRunes())
            units += Has(rune) ? _advances[rune.Value] : _boxAdvance;
        return units * size / Units;
    }
}
