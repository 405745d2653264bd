using System.Text;
using CsCheck;

namespace Loadmark.Storage.Tests.Model;

/// <summary>Texts of all sorts.</summary>
internal static class Texts
{
    private static readonly Gen<string> Rune =
        Gen.OneOf(Gen.Int[1, 0x7F], Gen.Int[0x80, 0xD7FF], Gen.Int[0xE000, 0x10FFFF]).Select(value => new Rune(value).ToString());

    /// <summary>Any Unicode text without a zero.</summary>
    public static readonly Gen<string> Words = Gen.OneOf(Rune.Array[0, 20].Select(string.Concat), Gen.OneOf<string>("", " ", "Pit board", "\u202E<b>'; DROP TABLE Rigs; --"));

    /// <summary>Any text at all, halves of surrogate pairs and zeros among it; from nothing to some ten thousand characters.</summary>
    public static readonly Gen<string> Any = Gen.OneOf(
        Gen.String[Gen.Char[char.MinValue, char.MaxValue], 0, 40],
        Gen.String[Gen.Char[char.MinValue, char.MaxValue], 400, 3000],
        Gen.String[Gen.Char['a', 'd'], 400, 9000],
        Rune.Array[0, 1500].Select(string.Concat));

    /// <summary>Lines of which a few differ from text to text, as edits of a rig make them.</summary>
    public static readonly Gen<string> Lines = Gen.OneOf<string>("drive-3: { kind: analog drive } # 9V ⎓\n", "🎸 🎹\n", "\uD83C", "delay-2\n", "\r\n").Array[0, 30].Select(string.Concat);
}
