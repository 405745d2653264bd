using System.Globalization;
using System.Text.Json.Nodes;
using Loadmark.Files.Errors;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Tests;

/// <summary>Shows a schema validator the JSON that an editor makes of YAML, by the core schema of YAML 1.2.</summary>
internal static class YamlToJson
{
    public static string Convert(string text) => ToJson(TreeReader.Read(text, new ErrorList("f"))!, text)!.ToJsonString();

    private static JsonNode? ToJson(Node node, string text) => node switch
    {
        MappingNode mapping => new JsonObject(mapping.Entries.Select(entry => KeyValuePair.Create(entry.Key.Value, ToJson(entry.Value, text)))),
        SequenceNode sequence => new JsonArray([.. sequence.Items.Select(item => ToJson(item, text))]),
        ScalarNode { IsNull: true } => null,
        ScalarNode scalar when text[scalar.Start.Index] is '"' or '\'' => JsonValue.Create(scalar.Value),
        ScalarNode { Value: "true" or "True" or "TRUE" } => JsonValue.Create(true),
        ScalarNode { Value: "false" or "False" or "FALSE" } => JsonValue.Create(false),
        ScalarNode scalar when decimal.TryParse(scalar.Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => JsonValue.Create(number),
        ScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new InvalidOperationException(node.Form),
    };
}
