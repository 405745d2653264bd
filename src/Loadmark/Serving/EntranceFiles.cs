using System.Net;
using Loadmark.Storage.Disk;
using Loadmark.Web.Guarding;

namespace Loadmark.Serving;

/// <summary>
/// The key as files that only the user can read, in the folder that rigs are kept in, for as long as the program runs: a header for other
/// programs, and a page that leads the browser to the address with the key. What is given to a command is in the list of processes, which
/// every account can read; the name of a file tells nothing.
/// </summary>
internal sealed class EntranceFiles : IDisposable
{
    private EntranceFiles(string header, string page) => (Header, Page) = (header, page);

    /// <summary>The file with the header, as a line that <c>curl -H @FILE</c> takes.</summary>
    public string Header { get; }

    /// <summary>The file that leads a browser in.</summary>
    public string Page { get; }

    /// <summary>Writes the two files, readable by the user alone.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="address">Where the program is: http://127.0.0.1:5230.</param>
    /// <param name="key">The key.</param>
    /// <exception cref="IOException">They cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">They may not be written.</exception>
    public static EntranceFiles Write(string folder, string address, EntryKey key)
    {
        // Several programs may keep their rigs in one folder, each at a port of its own.
        var stem = Path.Combine(folder, $"loadmark-{new Uri(address).Port}");
        var files = new EntranceFiles($"{stem}.header", $"{stem}.html");
        try
        {
            PrivateFile.Write(files.Header, $"{key.HeaderLine}\n");
            var entrance = WebUtility.HtmlEncode(key.EntranceAt(address));
            PrivateFile.Write(
                files.Page,
                $"""
                <!DOCTYPE html>
                <html lang="en"><head><meta charset="utf-8" /><title>Loadmark</title>
                <meta name="referrer" content="no-referrer" /><meta http-equiv="refresh" content="0; url={entrance}" /></head>
                <body><p><a href="{entrance}">On to Loadmark</a></p></body></html>

                """);
            return files;
        }
        catch
        {
            files.Dispose();
            throw;
        }
    }

    /// <summary>Removes the files. The key in them opens nothing any more.</summary>
    public void Dispose()
    {
        foreach (var file in (string[])[Header, Page])
        {
            try
            {
                File.Delete(file);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                // The disk has gone, or is read-only now.
            }
        }
    }
}
