using System.Text.Json;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Requests;

/// <summary>A body that is an object of JSON with texts in it.</summary>
internal sealed class BodyObject
{
    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = 8 };

    private readonly Dictionary<string, JsonElement> _values = new(StringComparer.Ordinal);

    /// <summary>Reads a body as an object.</summary>
    /// <param name="body">The body.</param>
    /// <param name="shape">What members it has.</param>
    /// <param name="refusal">What is wrong with it; null where nothing is.</param>
    /// <returns>The object; null where something is wrong.</returns>
    public static BodyObject? Read(ReadOnlyMemory<byte> body, BodyShape shape, out Problem? refusal)
    {
        var found = new BodyObject();
        bool isObject;
        try
        {
            using var document = JsonDocument.Parse(body, Strict);
            isObject = document.RootElement.ValueKind == JsonValueKind.Object;
            if (isObject)
            {
                foreach (var property in document.RootElement.EnumerateObject())
                    found._values[property.Name] = property.Value.Clone();
            }
        }
        catch (JsonException fault)
        {
            refusal = Malformed(fault);
            return null;
        }
        catch (InvalidOperationException)
        {
            refusal = Wrong("The body has a key that is not Unicode text.");
            return null;
        }

        var fits = isObject
            && shape.Members.All(member => member.IsOptional || found._values.ContainsKey(member.Name))
            && found._values.Keys.All(key => shape.Members.Any(member => member.Name == key));
        refusal = fits
            ? null
            : Wrong($"The body has to be an object with {string.Join(" and ", shape.Members.Select(static member => member.Name))}, "
                + "and nothing else.");
        return fits ? found : null;
    }

    /// <summary>Whether a body is a text of JSON, in quotes.</summary>
    public static bool IsText(ReadOnlySpan<byte> body) => body.TrimStart(" \t\r\n"u8) is [(byte)'"', ..];

    /// <summary>Reads a body that is a text of JSON.</summary>
    /// <param name="body">The body.</param>
    /// <param name="refusal">What is wrong with it; null where nothing is.</param>
    public static string? ReadText(ReadOnlyMemory<byte> body, out Problem? refusal)
    {
        try
        {
            using var document = JsonDocument.Parse(body, Strict);
            var text = TextOf(document.RootElement);
            refusal = text is null ? Wrong("The text in quotes is not Unicode text.") : null;
            return text;
        }
        catch (JsonException fault)
        {
            refusal = Malformed(fault);
            return null;
        }
    }

    /// <summary>The text under a key.</summary>
    /// <param name="member">The member.</param>
    /// <param name="refusal">What is wrong with it; null where nothing is.</param>
    public string? Text(BodyMember member, out Problem? refusal)
    {
        var text = TextOf(_values[member.Name]);
        refusal = text is null ? Wrong($"{member.Name} has to be a text.") : null;
        return text;
    }

    /// <summary>A text that need not be there.</summary>
    /// <param name="member">The member.</param>
    /// <param name="refusal">What is wrong with it; stays as it is where nothing is.</param>
    public string? TextIfAny(BodyMember member, ref Problem? refusal)
    {
        if (!_values.TryGetValue(member.Name, out var value) || value.ValueKind == JsonValueKind.Null)
            return null;
        if (TextOf(value) is { } text && !text.Contains('\0', StringComparison.Ordinal))
            return text;
        refusal ??= Wrong($"{member.Name} has to be a text.");
        return null;
    }

    /// <summary>The texts under a key.</summary>
    /// <param name="member">The member.</param>
    /// <param name="refusal">What is wrong with them; null where nothing is.</param>
    public IReadOnlyList<string>? Texts(BodyMember member, out Problem? refusal)
    {
        if (!_values.TryGetValue(member.Name, out var list) || (member.IsOptional && list.ValueKind == JsonValueKind.Null))
        {
            refusal = null;
            return [];
        }

        var texts = list.ValueKind == JsonValueKind.Array ? list.EnumerateArray().Select(TextOf).ToList() : null;
        var fits = texts is not null && texts.TrueForAll(static text => text is not null);
        refusal = fits ? null : Wrong($"{member.Name} has to be a list of texts.");
        return fits ? texts!.ConvertAll(static text => text!) : null;
    }

    /// <summary>The text of an element; null where it is none, or half of a pair that is one character stands alone in it.</summary>
    private static string? TextOf(JsonElement element)
    {
        if (element.ValueKind != JsonValueKind.String)
            return null;
        try
        {
            return element.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private static Problem Malformed(JsonException fault) =>
        Wrong(
            fault.LineNumber is { } line
                ? $"The body is not JSON that can be used, at line {line + 1}, byte {(fault.BytePositionInLine ?? 0) + 1}."
                : "The body is not JSON that can be used.");

    private static Problem Wrong(string detail) => new(ProblemKind.BadRequest, detail);
}
