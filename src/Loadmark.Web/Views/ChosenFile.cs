using System.Text;
using Loadmark.Files;
using Microsoft.AspNetCore.Components.Forms;

namespace Loadmark.Web.Views;

/// <summary>Reads files that the user chose or dropped.</summary>
public static class ChosenFile
{
    /// <summary>The text of a file.</summary>
    /// <param name="file">The file. Its name is never used as a path.</param>
    /// <param name="mostBytes">The largest file that is taken.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <returns>The text; null where it is too large or not UTF-8.</returns>
    public static async Task<string?> ReadTextAsync(
        IBrowserFile file, int mostBytes = RigFileReader.MostBytes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Size > mostBytes ? null : TextOf(await ReadBytesAsync(file, mostBytes, cancellation), mostBytes);
    }

    /// <summary>The bytes of a file.</summary>
    /// <param name="file">The file, no larger than <paramref name="mostBytes"/>.</param>
    /// <param name="mostBytes">The largest file that is taken.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <exception cref="IOException">It is larger.</exception>
    public static async Task<byte[]> ReadBytesAsync(IBrowserFile file, int mostBytes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(file);
        await using var stream = file.OpenReadStream(mostBytes, cancellation);
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes, cancellation);
        return bytes.ToArray();
    }

    /// <summary>The text that bytes are in UTF-8.</summary>
    /// <param name="bytes">The bytes of a file.</param>
    /// <param name="mostBytes">The most of them that a text has.</param>
    /// <returns>The text; null where they are more, or not UTF-8.</returns>
    public static string? TextOf(byte[] bytes, int mostBytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (bytes.Length > mostBytes)
            return null;
        try
        {
            return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
