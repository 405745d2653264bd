using System.Text;
using Loadmark.Core.Checks;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>The picture of a rig in whole sentences.</summary>
internal static class RigDescription
{
    /// <summary>Longer lists are cut: the table of outlets says it all, this says what the picture is.</summary>
    private const int MostFeeds = 60;

    public static string Of(DiagramModel view)
    {
        var rig = view.Rig;
        var text = new StringBuilder();
        text.Append($"Single-line diagram of {rig.Rig.Name}: {Count(rig.Supplies.Count, "supply", "supplies")} with "
            + $"{Count(rig.Outlets.Count, "outlet", "outlets")}, {Count(rig.Loads.Count, "load", "loads")}. ");
        text.Append(Sentences.OfMains(rig.Rig)).Append(' ');
        text.Append(VerdictSentence.Of(view.Check));

        foreach (var feed in rig.Feeds.Items.Take(MostFeeds))
            text.Append($" {feed.OutletNames} at {feed.VoltsText}{(feed.Lead is { } lead ? $" over {lead.Id}" : "")} feeds "
                + $"{Phrases.List(Phrases.Ids(feed.Loads))}.");
        if (rig.Feeds.Count > MostFeeds)
            text.Append($" So do {rig.Feeds.Count - MostFeeds} more.");
        if (!view.Rows.Unfed.IsEmpty)
            text.Append($" Not fed: {Phrases.List(Phrases.Ids(view.Rows.Unfed))}.");
        return SafeText.Clean(text.ToString());
    }

    private static string Count(int count, string one, string many) => count switch
    {
        0 => $"no {many}",
        1 => $"one {one}",
        _ => $"{count} {many}",
    };
}
