using Loadmark.Core.Nameplates;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks;

/// <summary>Quotes what stands on labels in words that were not understood, where it may be the very thing that is missing.</summary>
internal static class UnclearLabel
{
    private const int MostQuoted = 3;

    /// <summary>One sentence for each load whose label says something of a topic that was not understood; empty where none does.</summary>
    /// <param name="loads">The loads.</param>
    /// <param name="topic">What the words would be about.</param>
    public static string Quote(IEnumerable<WiredLoad> loads, LabelTopics topic)
    {
        var sentences = new List<string>();
        foreach (var load in loads)
        {
            if (sentences.Count < MostQuoted && Words(load.Rating.Load.Label, topic) is { } words)
                sentences.Add($" On the label of {load.Id} stands “{words}”, which was not understood.");
        }

        return string.Concat(sentences);
    }

    private static string? Words(Nameplate? label, LabelTopics topic) =>
        label is { Unread.IsEmpty: false } && (label.NotUnderstood & topic) != LabelTopics.None
            ? string.Join(" ", label.Unread.Select(static piece => piece.Text))
            : null;
}
