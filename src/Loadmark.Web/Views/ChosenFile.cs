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
        if (file.Size > mostBytes)
            return null;
        await using var stream = file.OpenReadStream(mostBytes, cancellation);
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes, cancellation);
        try
        {
            return new UTF8Encoding(
                encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(bytes.GetBuffer(), 0, (int)bytes.Length);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
