using System.Text;
using Loadmark.Core.LeadLists;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;

namespace Loadmark.Files.Readings;

/// <summary>
/// Reads what was measured on a rig: lines such as <c>by: R. Ellery</c> first, then a table of readings, parted by commas, semicolons or
/// tabs, or lines such as <c>delay-2: -9.02 V open, -8.95 V loaded, 212 mA</c>. Whatever is wrong comes back as errors.
/// </summary>
public static class ReadingsReader
{
    private const string What = "file of readings";

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="fileName">The name that errors carry.</param>
    /// <param name="plugs">The plugs of the rig that was measured.</param>
    public static ReadingsResult Read(string text, string fileName, PlugList plugs)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        ArgumentNullException.ThrowIfNull(plugs);
        return Read(text, new ErrorList(fileName), plugs);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Its path. One that cannot be read comes back as an error.</param>
    /// <param name="plugs">The plugs of the rig that was measured.</param>
    /// <param name="patience">How long to wait for somebody to write to it, where it is a pipe; null for the common time, of 10 s.</param>
    public static ReadingsResult ReadFile(string path, PlugList plugs, TimeSpan? patience = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(plugs);
        var errors = new ErrorList(path);
        return RigFile.LoadText(path, errors, What, patience: patience) is { } text
            ? Read(text, errors, plugs)
            : new ReadingsResult(null, errors.ToArray());
    }

    private static ReadingsResult Read(string text, ErrorList errors, PlugList plugs)
    {
        if (text.StartsWith('\uFEFF'))
            text = text[1..];
        var control = ControlCharacters.FirstIn(text);
        if (text.Length > RigFileReader.MostBytes || Encoding.UTF8.GetByteCount(text) > RigFileReader.MostBytes)
        {
            errors.Add(null, RigFile.TooLarge(What));
        }
        else if (control >= 0)
        {
            errors.Add(
                Spot.At(text, control), $"the character U+{(int)text[control]:X4} has no place in a text file",
                $"U+{(int)text[control]:X4}");
        }
        else
        {
            var session = new SessionLines(text, plugs, errors).Read();
            if (!errors.Any)
                return new ReadingsResult(session, []);
        }

        return new ReadingsResult(null, errors.ToArray());
    }
}
