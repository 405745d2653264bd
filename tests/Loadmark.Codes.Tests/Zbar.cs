using System.Diagnostics;

namespace Loadmark.Codes.Tests;

/// <summary>Debian's zbarimg, a reader of QR codes that is not ours.</summary>
internal static class Zbar
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>The bytes of each code that it reads in a picture, one after the other.</summary>
    /// <param name="path">The picture's file.</param>
    /// <param name="options">What it is told beside that it is to read QR codes as they are.</param>
    /// <exception cref="TimeoutException">It does not end.</exception>
    public static byte[] Read(string path, params string[] options)
    {
        var start = new ProcessStartInfo("zbarimg", ["--quiet", "--raw", .. options, "-Sbinary", "-Sdisable", "-Sqrcode.enable", path])
        { RedirectStandardOutput = true, UseShellExecute = false };
        using var zbar = Process.Start(start)!;
        using var read = new MemoryStream();
        zbar.StandardOutput.BaseStream.CopyTo(read);
        return zbar.WaitForExit(Patience) ? read.ToArray() : throw new TimeoutException("zbarimg did not end.");
    }
}
