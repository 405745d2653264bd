using System.Buffers;
using Loadmark.Core.Nameplates.Reading;

namespace Loadmark.Core.Nameplates;

/// <summary>Reads the text of nameplates: labels as they are printed and as people type them.</summary>
/// <remarks>
/// Three steps: the text is cut into tokens (<c>Lexer</c>), what can be understood is picked out (<c>LabelScan</c>), and
/// figures that belong together are joined (<c>Grouper</c>, <c>NameplateBuilder</c>). Whatever no step took comes back as
/// <see cref="Nameplate.Unread"/>. See docs/decisions/0003-reading-nameplates.md.
/// </remarks>
public static class NameplateReader
{
    /// <summary>The most characters that are read; no label has more, and the rest comes back unread.</summary>
    public const int LongestLabel = 4096;

    /// <summary>Reads a nameplate. Never throws on any text, and takes time in proportion to its length.</summary>
    /// <param name="text">The label's text, as printed or typed.</param>
    /// <returns>What was read and what was not.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public static Nameplate Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var length = ReadableLength(text);
        char[]? rented = null;
        var normal = length <= 256 ? stackalloc char[256] : rented = ArrayPool<char>.Shared.Rent(length);
        normal = normal[..length];
        LabelText.Normalise(text.AsSpan(0, length), normal);

        using var tokens = new TokenList();
        Lexer.Cut(normal, tokens);
        var scan = LabelScan.Of(tokens, normal);
        var grouper = new Grouper(tokens);
        grouper.Run(scan.Items);
        var nameplate = NameplateBuilder.Build(text, scan, grouper, tokens, length);
        if (rented is not null)
            ArrayPool<char>.Shared.Return(rented);
        return nameplate;
    }

    /// <summary>All of a text of sane length; of a longer one as much as ends with a whole word.</summary>
    private static int ReadableLength(string text)
    {
        if (text.Length <= LongestLabel)
            return text.Length;
        var space = text.AsSpan(0, LongestLabel).LastIndexOfAny(' ', '\n', '\t');
        return space > 0 ? space : LongestLabel;
    }
}
