using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Loadmark.Drawing.Pdf;

/// <summary>
/// What PDFsharp leaves to be done: equal documents are equal files, and compressed streams are whole. It names subsets of fonts and the
/// document itself at random, and its streams lack the checksum at their end (RFC 1950), which strict readers miss. So it writes without
/// compression, and the objects are written anew here, as they are but for these.
/// </summary>
/// <remarks>
/// By ISO 32000-1: the cross-reference table 7.5.4, the file's identity from its content 14.4, the tags of subsets 9.6.4 (any six letters,
/// different for different subsets).
/// </remarks>
internal sealed partial class PdfFinish : IDisposable
{
    private static readonly Encoding Bytes = Encoding.Latin1;

    private readonly Dictionary<string, string> _tags = new(StringComparer.Ordinal);
    private readonly MemoryStream _file = new();
    private readonly string _pdf;

    private PdfFinish(byte[] pdf) => _pdf = Bytes.GetString(pdf);

    /// <summary>Writes a document anew.</summary>
    /// <param name="pdf">What PDFsharp saved without compression, with one cross-reference table.</param>
    /// <exception cref="InvalidDataException">It is written otherwise than that.</exception>
    public static byte[] Of(byte[] pdf)
    {
        using var finish = new PdfFinish(pdf);
        return finish.Write();
    }

    public void Dispose() => _file.Dispose();

    private byte[] Write()
    {
        var table = StartOf(LastPlace().Match(_pdf));
        var places = PlacesFrom(table, out var trailer);
        var order = Enumerable.Range(1, places.Length - 1).Where(id => places[id] > 0).OrderBy(id => places[id]).ToList();
        var identity = Convert.ToHexString(SHA256.HashData(Bytes.GetBytes(Stable(_pdf[..table]))).AsSpan(0, 16));
        Add(_pdf[..places[order[0]]]);
        var written = new long[places.Length];
        for (var index = 0; index < order.Count; index++)
        {
            written[order[index]] = _file.Length;
            var end = index + 1 < order.Count ? places[order[index + 1]] : table;
            AddObject(_pdf[places[order[index]]..end], identity);
        }

        var start = _file.Length;
        Add(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {places.Length}\n0000000000 65535 f \n"));
        foreach (var place in written.AsSpan(1))
            Add(string.Create(CultureInfo.InvariantCulture, $"{place:0000000000} {(place > 0 ? "00000 n" : "65535 f")} \n"));
        trailer = Identity().Replace(trailer, $"/ID[<{identity}><{identity}>]");
        Add(string.Create(CultureInfo.InvariantCulture, $"trailer\n{trailer}\nstartxref\n{start}\n%%EOF\n"));
        return _file.ToArray();
    }

    private int[] PlacesFrom(int table, out string trailer)
    {
        var lines = _pdf[table..].Split('\n');
        if (lines[0].Trim() != "xref" || lines[1].Trim().Split(' ') is not ["0", var count])
            throw new InvalidDataException("A document has another cross-reference table than was expected.");
        var places = new int[int.Parse(count, CultureInfo.InvariantCulture)];
        for (var id = 0; id < places.Length; id++)
            places[id] = lines[id + 2][17] == 'n' ? int.Parse(lines[id + 2].AsSpan(0, 10), CultureInfo.InvariantCulture) : 0;
        trailer = Trailer().Match(_pdf, table).Groups["keys"].Value;
        if (trailer.Length == 0)
            throw new InvalidDataException("A document has no trailer.");
        return places;
    }

    private void AddObject(string text, string identity)
    {
        var stream = StreamStart().Match(text);
        if (!stream.Success)
        {
            Add(Stable(text));
            return;
        }

        var head = text[..stream.Index];
        var length = int.Parse(LengthKey().Match(head).Groups["length"].ValueSpan, CultureInfo.InvariantCulture);
        var content = text.Substring(stream.Index + stream.Length, length);
        if (head.Contains("/Type/Metadata", StringComparison.Ordinal))
        {
            // Left as it is, so that programs which know nothing of PDF can read it (ISO 32000-1, 14.3.2).
            Add(head);
            Add(stream.Value);
            Add(DocumentNames().Replace(content, match => $"{match.Groups["key"].Value}uuid:{AsUuid(identity)}"));
            Add(text[(stream.Index + stream.Length + length)..]);
            return;
        }

        using var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            zip.Write(Bytes.GetBytes(content));
        var filter = string.Create(CultureInfo.InvariantCulture, $"/Length {packed.Length}/Filter/FlateDecode");
        Add(LengthKey().Replace(Stable(head), filter, 1));
        Add("stream\n");
        packed.WriteTo(_file);
        Add("\nendstream\nendobj\n");
    }

    /// <summary>The text with the names of subsets by the order in which they come, and without the document's random names.</summary>
    private string Stable(string text) =>
        DocumentNames().Replace(SubsetTag().Replace(text, TagOf), static match => match.Groups["key"].Value);

    private string TagOf(Match match)
    {
        if (!_tags.TryGetValue(match.Groups["tag"].Value, out var tag))
            _tags.Add(match.Groups["tag"].Value, tag = $"AAAAA{(char)('A' + _tags.Count)}");
        return $"/{tag}+Loadmark";
    }

    private void Add(string text) => _file.Write(Bytes.GetBytes(text));

    private static int StartOf(Match match) => match.Success
        ? int.Parse(match.Groups["place"].ValueSpan, CultureInfo.InvariantCulture)
        : throw new InvalidDataException("A document does not say where its cross-reference table is.");

    private static string AsUuid(string hex) => new Guid(Convert.FromHexString(hex)).ToString("D");

    [GeneratedRegex(@"startxref\s+(?<place>\d+)\s+%%EOF\s*\z", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex LastPlace();

    [GeneratedRegex(@"trailer\s+(?<keys><<.*>>)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Trailer();

    [GeneratedRegex(@"(?<=>>\s*)stream\r?\n", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex StreamStart();

    [GeneratedRegex(@"/Length (?<length>\d+)", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex LengthKey();

    [GeneratedRegex(@"/ID\[<[0-9A-F]+><[0-9A-F]+>\]", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Identity();

    [GeneratedRegex(@"/(?<tag>[A-Z]{6})\+Loadmark", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex SubsetTag();

    [GeneratedRegex(@"(?<key><xmpMM:(?:Document|Instance)ID>)uuid:[0-9a-f-]{36}", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex DocumentNames();
}
