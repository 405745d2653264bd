using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Values;

namespace Loadmark.Files.Writing;

/// <summary>Writes leads and feeds.</summary>
internal static class WiringWriter
{
    /// <summary>Writes the lead's name and its keys.</summary>
    public static void WriteLead(YamlWriter yaml, Lead lead)
    {
        yaml.Text(lead.Id);
        yaml.BeginGroup(flow: true);
        yaml.Fields(lead, LeadKeys.Table);
        yaml.EndGroup();
    }

    /// <summary>Writes the key <c>wired</c> with its feeds, one a line.</summary>
    public static void WriteWired(YamlWriter yaml, ValueList<Feed> wired)
    {
        yaml.Text("wired");
        yaml.BeginList(flow: wired.Count == 0);
        foreach (var feed in wired)
            WriteFeed(yaml, feed);
        yaml.EndList();
    }

    /// <summary>Writes one feed in braces.</summary>
    public static void WriteFeed(YamlWriter yaml, Feed feed)
    {
        yaml.BeginGroup(flow: true);
        yaml.OneOrList("from", [.. feed.From.Select(outlet => outlet.ToString())]);
        yaml.Entry("joined", feed.Joined == Joint.None ? null : RigWords.Joined.WordOf(feed.Joined));
        if (feed.At.Count > 0)
            yaml.OneOrList("at", [.. feed.At.Select(volts => QuantityWriter.Of(Unit.Volt, volts))]);
        yaml.Entry("lead", feed.Lead);
        yaml.OneOrList("to", [.. feed.To]);
        yaml.Entry("pinned", feed.Pinned ? true : null);
        yaml.EndGroup();
    }
}
