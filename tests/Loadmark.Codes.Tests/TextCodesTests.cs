using System.IO.Compression;
using System.Text;
using CsCheck;
using Loadmark.Codes.Packing;

namespace Loadmark.Codes.Tests;

/// <summary>A text as codes, and back: the same to the letter, or none.</summary>
public sealed class TextCodesTests
{
    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.String[0, 400],
        Gen.String[Gen.Char["loads: supply\n  9V12#{}ü⎓"], 0, 3000],
        Gen.Int[0, 9000].Select(static length => string.Concat(Enumerable.Range(0, length).Select(static at => (char)(33 + ((at * at * 7919) % 5003 % 90))))));

    [Fact]
    public void Any_text_comes_back_to_the_letter() => Texts.Sample(static text =>
    {
        var codes = TextCodes.Pack(text);
        if (!CanBeWritten(text))
            return codes.IsEmpty;
        var found = Gathered(codes.Reverse().Concat(codes));
        return codes.All(static code => code.Length <= TextCodes.MostCodeBytes) && found.IsWhole && Assert.Single(found.Texts()).Text == text;
    });

    [Fact]
    public void A_flipped_bit_never_gives_another_text() =>
        Gen.Select(Texts.Where(CanBeWritten), Gen.Int[0, int.MaxValue]).Sample(static (text, at) =>
        {
            var codes = TextCodes.Pack(text);
            var (code, bit) = (at % codes.Length, at / codes.Length % (codes[at % codes.Length].Length * 8));
            codes[code][bit / 8] ^= (byte)(1 << (bit % 8));
            var found = Gathered(codes);
            return found.Texts().All(static one => one.Text is null) && found.CountOf(CodeKind.Damaged) + found.CountOf(CodeKind.Foreign) == 1;
        });

    [Fact]
    public void A_missing_code_is_named()
    {
        var codes = TextCodes.Pack(Incompressible(3600));
        Assert.Equal(4, codes.Length);
        var text = Assert.Single(Gathered([codes[3], codes[0]]).Texts());
        Assert.Equal([2, 3], text.Missing);
        Assert.Equal((4, null), (text.Count, text.Text));
    }

    [Fact]
    public void Codes_of_two_texts_are_told_apart()
    {
        var found = Gathered([.. TextCodes.Pack("rig: one"), .. TextCodes.Pack("rig: two"), "https://example.org"u8.ToArray()]);
        Assert.Equal(["rig: one", "rig: two"], found.Texts().Select(static text => text.Text));
        Assert.Equal(1, found.CountOf(CodeKind.Foreign));
    }

    /// <summary>Sixteen codes and no more; a text that is larger gets none rather than some.</summary>
    [Fact]
    public void There_is_an_end_to_what_codes_hold()
    {
        var (fits, exceeds) = (0, 20_000);
        while (exceeds - fits > 1)
        {
            var middle = (fits + exceeds) / 2;
            (fits, exceeds) = TextCodes.Pack(Incompressible(middle)).IsEmpty ? (fits, middle) : (middle, exceeds);
        }

        Assert.Equal(TextCodes.MostParts, TextCodes.Pack(Incompressible(fits)).Length);
        Assert.Equal(Incompressible(fits), Assert.Single(Gathered(TextCodes.Pack(Incompressible(fits))).Texts()).Text);
        Assert.Single(TextCodes.Pack(new string(' ', TextCodes.MostTextBytes)));
        Assert.Empty(TextCodes.Pack(new string(' ', TextCodes.MostTextBytes + 1)));
    }

    /// <summary>Sound checksums around what unpacks to more than any rig file, to bytes that are no text, or to a text of another name.</summary>
    [Fact]
    public void What_somebody_made_to_do_harm_gives_no_text()
    {
        Assert.Null(TextOf(new byte[64 * 1024 * 1024], static bytes => bytes));
        Assert.Null(TextOf([0xC3, 0x28], static bytes => bytes));
        Assert.Null(TextOf("rig: x"u8.ToArray(), static bytes => [.. bytes, 1]));
        Assert.Equal("rig: x", TextOf("rig: x"u8.ToArray(), static bytes => bytes));
        var one = new CodePart("0011223344556677", 1, 1, [1]).Write();
        Assert.Null(Assert.Single(Gathered([one, new CodePart("0011223344556677", 1, 1, [2]).Write()]).Texts()).Text);
    }

    [Fact]
    public void A_newer_layout_is_told()
    {
        var code = TextCodes.Pack("rig: x")[0];
        code[8] = 2;
        System.Security.Cryptography.SHA256.HashData(code.AsSpan(0, code.Length - 4)).AsSpan(0, 4).CopyTo(code.AsSpan(code.Length - 4));
        Assert.Equal(CodeKind.Newer, new GatheredCodes().Add(code));
    }

    internal static string Incompressible(int length) =>
        new([.. new Random(7).GetItems("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/".ToCharArray(), length)]);

    internal static GatheredCodes Gathered(IEnumerable<byte[]> codes)
    {
        var found = new GatheredCodes();
        foreach (var code in codes)
            found.Add(code);
        return found;
    }

    private static string? TextOf(byte[] bytes, Func<byte[], byte[]> named)
    {
        var packed = new byte[BrotliEncoder.GetMaxCompressedLength(bytes.Length)];
        Assert.True(BrotliEncoder.TryCompress(bytes, packed, out var length));
        return Assert.Single(Gathered([new CodePart(CodePart.DigestOf(named(bytes)), 1, 1, packed[..length]).Write()]).Texts()).Text;
    }

    private static bool CanBeWritten(string text)
    {
        try
        {
            new UTF8Encoding(false, true).GetByteCount(text);
            return true;
        }
        catch (EncoderFallbackException)
        {
            return false;
        }
    }
}
