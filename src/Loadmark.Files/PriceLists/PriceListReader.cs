using System.Text;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;

namespace Loadmark.Files.PriceLists;

/// <summary>
/// Reads price lists: one supply or lead a line, separated by commas or semicolons. Whatever is wrong with a file comes back as errors,
/// never as an exception.
/// </summary>
public static class PriceListReader
{
    private const string What = "price list";

    /// <summary>Reads the text of a price list.</summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <param name="fileName">The name that errors carry.</param>
    /// <returns>The offers, or every error in the text.</returns>
    public static PriceListResult Read(string text, string fileName)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(fileName);
        return Read(text, new ErrorList(fileName));
    }

    /// <summary>Reads a price list.</summary>
    /// <param name="path">Its path. One that cannot be read comes back as an error.</param>
    /// <param name="patience">How long to wait for somebody to write to it, where it is a pipe; null for the common time, of 10 s.</param>
    /// <returns>The offers, or every error in the file.</returns>
    public static PriceListResult ReadFile(string path, TimeSpan? patience = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var errors = new ErrorList(path);
        return RigFile.LoadText(path, errors, What, patience: patience) is { } text
            ? Read(text, errors)
            : new PriceListResult(null, errors.ToArray());
    }

    private static PriceListResult Read(string text, ErrorList errors)
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
                Spot.At(text, control),
                $"the character U+{(int)text[control]:X4} has no place in a text file",
                $"U+{(int)text[control]:X4}");
        }
        else
        {
            var offers = OfferRows.Read(text, errors);
            if (!errors.Any)
                return new PriceListResult([.. offers], []);
        }

        return new PriceListResult(null, errors.ToArray());
    }
}
