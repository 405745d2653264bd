using Loadmark.Storage.History;

namespace Loadmark.Storage.Gear;

/// <summary>What may be said of a piece of gear; anything else is the caller's mistake.</summary>
internal static class ContentLimits
{
    public static void Check(GearContent content, string what)
    {
        ArgumentNullException.ThrowIfNull(content);
        foreach (var (text, name) in (ReadOnlySpan<(string, string)>)
        [
            (content.Tag, nameof(content.Tag)),
            (content.Name, nameof(content.Name)),
            (content.Label, nameof(content.Label)),
            (what, nameof(what)),
        ])
            TextLimits.CheckWords(text, name);
        if (string.IsNullOrWhiteSpace(content.Tag))
            throw new ArgumentException("Gear has a tag.", nameof(content));
        foreach (var word in content.Words)
        {
            TextLimits.CheckWords(word, nameof(content.Words));
            if (word.Contains('\n') || word.Length == 0)
                throw new ArgumentException("A word that gear is filed under is not empty, and on one line.", nameof(content));
        }

        TextLimits.CheckText(content.Text, nameof(content.Text));
    }
}
