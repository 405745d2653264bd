using System.Text;

namespace Loadmark.Bench;

/// <summary>Damages good texts in the ways that texts get damaged.</summary>
internal sealed class Mutator(Random random, string[] sources)
{
    private static readonly string[] Snippets =
    [
        "V", "mA", "A", "W", "-", "–", "−", "~", "⎓", "⏦", "=", "/", ";", " or ", "9", "0", ",", ".", "%", "\0", "\uFFFD", "\uD800", "\uDC00", "𝟗",
        "９", "٩", "\u200B", "\u00AD", "\n", "\t", "\r", "{", "}", "[", "]", "&a", "*a", "!!", "|", ">", "#", "'", "\"", "\\", "? ", ": ", "- ", "---",
        "centre", "negative", "(+)", "INPUT", "OUTPUT", "1e999", "NaN", "-1", "999999999999999999999", "null", "true", "<<: ",
    ];

    public string Next()
    {
        var text = new StringBuilder(sources[random.Next(sources.Length)]);
        for (var change = random.Next(1, 6); change > 0; change--)
            Change(text);
        return text.ToString();
    }

    private void Change(StringBuilder text)
    {
        var at = random.Next(text.Length + 1);
        switch (random.Next(8))
        {
            case 0:
                text.Insert(at, Snippets[random.Next(Snippets.Length)]);
                break;
            case 1:
                text.Remove(at, random.Next(Math.Min(20, text.Length - at) + 1));
                break;
            case 2 when at < text.Length:
                text[at] = (char)random.Next(0x20, 0x7F);
                break;
            case 3 when at < text.Length:
                text[at] = (char)random.Next(0x10000);
                break;
            case 4:
                var other = sources[random.Next(sources.Length)];
                var from = random.Next(other.Length);
                text.Insert(at, other.AsSpan(from, random.Next(Math.Min(60, other.Length - from) + 1)));
                break;
            case 5:
                text.Length = at;
                break;
            case 6:
                var piece = text.ToString(at, random.Next(Math.Min(30, text.Length - at) + 1));
                text.Insert(at, string.Concat(Enumerable.Repeat(piece, random.Next(1, 8))));
                break;
            default:
                for (var count = random.Next(12); count > 0; count--)
                    text.Append((char)random.Next(0x20, 0x3000));
                break;
        }
    }
}
