using System.Text;
using Loadmark.Core.Rigs;
using Loadmark.Files.Keys;
using Loadmark.Files.Values;
using Loadmark.Files.Writing;

namespace Loadmark.Files.Editing;

/// <summary>The value of <c>wired</c> as it goes into a text, for both styles.</summary>
internal static class WiringText
{
    /// <summary>What follows <c>wired:</c> in a block: lines that each begin with a line end, or " []".</summary>
    public static string Block(ValueList<Feed> wired, string indent, string newLine)
    {
        if (wired.Count == 0)
            return " []";
        var yaml = new YamlWriter();
        yaml.BeginGroup();
        WiringWriter.WriteWired(yaml, wired);
        yaml.EndGroup();
        var text = new StringBuilder();
        foreach (var line in yaml.Finish().TrimEnd().Split('\n').Skip(1))
            text.Append(newLine).Append(indent).Append(line);
        return text.ToString();
    }

    /// <summary>The wiring as JSON on one line, which is YAML too.</summary>
    public static string Flow(ValueList<Feed> wired)
    {
        var text = new StringBuilder("[");
        foreach (var feed in wired)
        {
            text.Append(text.Length > 1 ? ", {" : "{");
            Entry(text, "from", [.. feed.From.Select(outlet => outlet.ToString())]);
            if (feed.Joined != Joint.None)
                Entry(text, "joined", [RigWords.Joined.WordOf(feed.Joined)]);
            Entry(text, "at", [.. feed.At.Select(volts => QuantityWriter.Of(Unit.Volt, volts))]);
            if (feed.Lead is { } lead)
                Entry(text, "lead", [lead]);
            Entry(text, "to", [.. feed.To]);
            if (feed.Pinned)
                text.Append(", \"pinned\": true");
            text.Append('}');
        }

        return text.Append(']').ToString();
    }

    private static void Entry(StringBuilder text, string key, List<string> values)
    {
        if (values.Count == 0)
            return;
        if (text[^1] != '{')
            text.Append(", ");
        text.Append('"').Append(key).Append("\": ").Append(values.Count == 1 ? "" : "[");
        for (var i = 0; i < values.Count; i++)
        {
            if (i > 0)
                text.Append(", ");
            text.Append(NodeText.Quoted(values[i]));
        }

        text.Append(values.Count == 1 ? "" : "]");
    }
}
