using System.Text.Json.Nodes;
using Loadmark.Api.Requests;

namespace Loadmark.Api.Description;

/// <summary>The examples of the document: a board of Harbour Row Hire, an invented workshop, and what is answered about it.</summary>
internal static class BuiltInExample
{
    /// <summary>The text of an example.</summary>
    public static string TextOf(string name)
    {
        using var reader = new StreamReader(typeof(BuiltInExample).Assembly.GetManifestResourceStream($"api/{name}")
            ?? throw new InvalidOperationException($"The example {name} is not built in."));
        return reader.ReadToEnd();
    }

    /// <summary>An example as it stands in the document: an object where it is JSON, else a text.</summary>
    public static JsonNode? Of(ApiContent content)
    {
        if (content.Example is not { } name)
            return null;
        return content.MediaType == ApiContent.Json ? JsonNode.Parse(TextOf(name)) : JsonValue.Create(TextOf(name));
    }
}
