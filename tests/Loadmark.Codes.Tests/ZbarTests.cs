using Loadmark.Codes.Packing;

namespace Loadmark.Codes.Tests;

/// <summary>The codes read by a program that is not ours: Debian's zbar (ISO/IEC 18004 by another hand).</summary>
public sealed class ZbarTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("loadmark-codes-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(300, 1)]
    [InlineData(3000, 3)]
    [InlineData(12_000, 12)]
    public void Zbar_reads_the_same_bytes(int length, int least)
    {
        var codes = TextCodes.Pack(TextCodesTests.Incompressible(length));
        Assert.True(codes.Length >= least, $"{codes.Length}");
        foreach (var code in codes)
        {
            var path = Path.Combine(_folder.FullName, $"{Guid.NewGuid():N}.png");
            File.WriteAllBytes(path, DisturbedPicture.Png(DisturbedPicture.Of([code], 200)));
            Assert.Equal(code, Zbar.Read(path, "--oneshot"));
        }
    }
}
