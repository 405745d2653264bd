using System.Collections.Immutable;

namespace Loadmark.Meters.Scpi;

/// <summary>
/// A header as manuals print it, <c>MEASure[:VOLTage][:DC]?</c>: large letters are the short form, brackets may be left out, # stands for a
/// number, a question mark asks. Source: SCPI-99 vol. 1, 6.2 (from memory), by the vectors of an open parser.
/// </summary>
public sealed class HeaderPattern
{
    private readonly ImmutableArray<HeaderNode> _nodes;
    private readonly bool _asks;

    /// <summary>Reads a pattern.</summary>
    /// <exception cref="ArgumentException">A word of it is empty.</exception>
    public HeaderPattern(string pattern)
    {
        ArgumentException.ThrowIfNullOrEmpty(pattern);
        _asks = pattern.EndsWith('?');
        var nodes = ImmutableArray.CreateBuilder<HeaderNode>();
        var apart = pattern.TrimEnd('?').Replace("[", ":[", StringComparison.Ordinal).Replace("]", "]:", StringComparison.Ordinal);
        foreach (var part in apart.Split(':', StringSplitOptions.RemoveEmptyEntries))
        {
            // In [:ABcc] the bracket stands before the colon: it opens as a part of its own, and closes at the end of the word.
            if (part == "[")
                continue;
            var isOptional = part.EndsWith(']');
            var word = part.Trim('[', ']');
            var name = word.TrimEnd('#');
            ArgumentException.ThrowIfNullOrEmpty(name, nameof(pattern));
            var large = string.Concat(name.Where(static letter => !char.IsAsciiLetterLower(letter)));
            nodes.Add(new HeaderNode(large, name, name != word, isOptional));
        }

        _nodes = nodes.ToImmutable();
    }

    /// <summary>How many words a header has at the most.</summary>
    public int Count => _nodes.Length;

    /// <summary>Whether a header that was sent is this one.</summary>
    /// <param name="header">The header, without what follows it; a colon may stand before it.</param>
    public bool Matches(string header)
    {
        ArgumentNullException.ThrowIfNull(header);
        var words = header.TrimStart(':').TrimEnd('?').Split(':');
        return header.EndsWith('?') == _asks && words.Length <= _nodes.Length && Matches(words, 0, 0);
    }

    private bool Matches(string[] words, int word, int node)
    {
        if (node == _nodes.Length)
            return word == words.Length;
        return (word < words.Length && _nodes[node].Matches(words[word]) && Matches(words, word + 1, node + 1))
            || (_nodes[node].IsOptional && Matches(words, word, node + 1));
    }
}
