using Loadmark.Core.Nameplates;

namespace Loadmark.Files.Entry;

/// <summary>A line taken apart into an id and a label.</summary>
/// <param name="Id">The id; null when none was typed.</param>
/// <param name="Label">The rest.</param>
internal sealed record LineParts(string? Id, string Label)
{
    /// <summary>Takes a line apart: at a tab, at the first colon, or after an asset tag such as drive-3.</summary>
    /// <remarks>What stands before a colon is no id where it is words or figures of a label, as in "OUTPUT: 9 V".</remarks>
    public static LineParts Of(string content)
    {
        var tab = content.IndexOf('\t', StringComparison.Ordinal);
        if (tab > 0)
            return new LineParts(content[..tab].Trim(), content[(tab + 1)..].Replace('\t', ' ').Trim());
        var colon = content.IndexOf(':', StringComparison.Ordinal);
        if (colon >= 0)
            return IsOfLabel(content[..colon])
                ? new LineParts(null, content)
                : new LineParts(content[..colon].Trim(), content[(colon + 1)..].Trim());
        var tag = content[..AssetTag.LengthAtStart(content)];
        return tag.Length > 0 && !IsOfLabel(tag) ? new LineParts(tag, content[tag.Length..].Trim()) : new LineParts(null, content);
    }

    /// <summary>Whether a label says anything about voltage, current or power.</summary>
    public static bool HasFigures(Nameplate label) => label.Modes.Length > 0 || label.Mains is not null;

    private static bool IsOfLabel(string text)
    {
        var reading = NameplateReader.Read(text.Trim());
        return text.Trim().Length > 0 && (HasFigures(reading) || reading.Unread.Length == 0);
    }
}
