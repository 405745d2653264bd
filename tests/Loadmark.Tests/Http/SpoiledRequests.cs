using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace Loadmark.Tests.Http;

/// <summary>Requests as the document describes them, each spoiled in a few places.</summary>
/// <param name="shapes">The document.</param>
/// <param name="kept">The id of a rig that is kept, beside a load delay-2.</param>
/// <param name="random">The seeded source of all choices.</param>
internal sealed class SpoiledRequests(DocumentShapes shapes, string kept, Random random)
{
    private static readonly string[] Methods = ["GET", "POST", "PUT", "DELETE", "PATCH", "HEAD", "OPTIONS", "TRACE", "QUERY"];
    private static readonly string[] MediaTypes =
        ["application/json", "application/yaml", "text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "application/json; charset=utf-7", "x", "application/yaml;", "*/*"];

    private static readonly string[] Accepts = ["application/json", "text/event-stream", "application/x-ndjson", "image/png", "*/*;q=0", "text/event-stream;q=0, application/json", "\"", "a/b;c"];
    private static readonly string[] Values = ["", "true", "false", "0", "1", "-1", "3", "18446744073709551615", "18446744073709551616", "1e3", "brick", "brick,wall", "9 V 300 mA", "9 V 300 mA; 12 V", "%00", "\u0001", "⎓ 音", "NaN", " "];
    private static readonly string[] Revisions = ["\"1\"", "\"2\"", "*", "1", "W/\"1\"", "\"1\", \"2\"", "\"", "\"-1\"", "\"99999999999999999999\""];

    private readonly List<(string Path, string Method, JsonObject Operation)> _operations = [.. shapes.Operations];
    private readonly byte[][] _hostile =
    [
        [], [0], [0xFF, 0xFE, 0x41, 0x00], [0xEF, 0xBB, 0xBF], [0xC3, 0x28], "null"u8.ToArray(), "\"\""u8.ToArray(), "{}"u8.ToArray(), "[]"u8.ToArray(), "---\n---\n"u8.ToArray(),
        "&a [*a, *a]"u8.ToArray(), "rig: !!binary aGk="u8.ToArray(), Repeated("[", 50_000), Repeated("{\"a\":", 20_000), Repeated("- ", 50_000), Repeated("a: {", 20_000),
        Repeated("9V DC 300mA\n", 8_000), Encoding.UTF8.GetBytes(Manifold(1_000)),
    ];

    /// <summary>The next request, what it is of in the document, and what to say of it when it fails.</summary>
    public (HttpRequestMessage Request, string Path, string Method, string Told) Next()
    {
        var (path, method, operation) = Pick(_operations);
        var address = path.Replace("{id}", OneIn(8) ? Pick<string>([Guid.Empty.ToString(), "none", "%252e", "1"]) : kept, StringComparison.Ordinal)
            .Replace("{kind}", OneIn(10) ? Pick<string>(["supply", "lead", "Load", "x"]) : "load", StringComparison.Ordinal)
            .Replace("{tag}", OneIn(8) ? Pick<string>(["DELAY-2", "DL%2F02", "%01", "drive-3", "%E2%8E%93", "a%20b", new string('t', 2000)]) : "delay-2", StringComparison.Ordinal) + Query(operation);
        var verb = OneIn(15) ? Pick(Methods) : method.ToUpperInvariant();
        var request = new HttpRequestMessage(new HttpMethod(verb), address);
        var told = $"{verb} {address}";
        if (operation["requestBody"]?["content"]?.AsObject() is { } bodies && !OneIn(20))
        {
            var (mediaType, described) = Pick(bodies.ToList());
            var body = Body(described!);
            request.Content = new ByteArrayContent(body);
            var sent = OneIn(12) ? Pick(MediaTypes) : mediaType;
            request.Content.Headers.TryAddWithoutValidation("Content-Type", sent);
            if (OneIn(40))
                request.Content.Headers.TryAddWithoutValidation("Content-Encoding", "gzip");
            request.Headers.TransferEncodingChunked = OneIn(10);
            told += $" with {sent}: {Convert.ToBase64String(body.AsSpan(0, Math.Min(body.Length, 3000)))}";
        }

        if (OneIn(6))
            request.Headers.TryAddWithoutValidation("Accept", Pick(Accepts));
        if (operation["parameters"]?.AsArray().Any(static parameter => parameter!["name"]!.GetValue<string>() == "If-Match") == true && !OneIn(6))
            request.Headers.TryAddWithoutValidation("If-Match", Pick(Revisions));
        if (OneIn(40))
            request.Headers.TryAddWithoutValidation("Origin", "http://rigs.example");
        return (request, path, verb.ToLowerInvariant(), told);
    }

    private static byte[] Repeated(string piece, int times) => Encoding.UTF8.GetBytes(new StringBuilder().Insert(0, piece, times).ToString());

    /// <summary>A rig of many loads on one outlet.</summary>
    private static string Manifold(int loads)
    {
        var text = new StringBuilder("rig: many\nsupplies:\n  wall: { label: \"9V 5A\", outlets: { 1: \"\" } }\nleads:\n  c: { type: daisy chain, plugs: 900, tail: 1 m, pitch: 0.2 m, wire: 0.5 mm² }\nloads:\n");
        for (var load = 0; load < loads; load++)
            text.Append(CultureInfo.InvariantCulture, $"  L{load}: {{ label: 9V {(load % 90) + 1}mA }}\n");
        return text.ToString();
    }

    private string Query(JsonObject operation)
    {
        var parts = new List<string>();
        foreach (var parameter in operation["parameters"]?.AsArray().Where(static parameter => parameter!["in"]!.GetValue<string>() == "query") ?? [])
        {
            var name = parameter!["name"]!.GetValue<string>();
            if (!OneIn(4))
                continue;
            var example = parameter["example"] is JsonArray list ? list[0]!.ToString() : parameter["example"]!.ToString();
            var value = OneIn(2) ? example : Pick(Values);
            parts.Add(OneIn(10) ? name : $"{name}={(OneIn(20) ? value : Uri.EscapeDataString(value))}");
            if (OneIn(10))
                parts.Add(parts[^1]);
        }

        if (OneIn(25))
            parts.Add($"{Pick<string>(["onyl", "x", "%zz", "", "FILE", new string('q', 3000)])}={Uri.EscapeDataString(Pick(Values))}");
        return parts.Count == 0 ? "" : "?" + string.Join('&', parts);
    }

    private byte[] Body(JsonNode described)
    {
        if (OneIn(40))
            return new byte[250_000];
        if (OneIn(5))
            return Pick(_hostile);
        var body = described["example"] is JsonValue text && text.GetValueKind() == System.Text.Json.JsonValueKind.String ? text.GetValue<string>() : described["example"]!.ToJsonString();
        var bytes = Encoding.UTF8.GetBytes(body).ToList();
        for (var times = random.Next(0, 4); times > 0 && bytes.Count > 0; times--)
            Spoil(bytes);
        return [.. bytes];
    }

    private void Spoil(List<byte> bytes)
    {
        var at = random.Next(bytes.Count);
        var length = random.Next(1, Math.Min(40, bytes.Count - at) + 1);
        switch (random.Next(6))
        {
            case 0:
                bytes.RemoveRange(at, length);
                break;
            case 1:
                bytes.InsertRange(random.Next(bytes.Count), bytes.GetRange(at, length));
                break;
            case 2:
                bytes[at] = (byte)random.Next(256);
                break;
            case 3:
                bytes.InsertRange(at, Encoding.UTF8.GetBytes(Pick<string>(["\n", ": ", "- ", "\"", "{", "]", "&a ", "*a", "9 V", " mA", "0", "-", "\t", "1e999", "⎓", "null"])));
                break;
            case 4 when bytes[at] is >= (byte)'0' and <= (byte)'9':
                bytes.InsertRange(at, Encoding.UTF8.GetBytes(random.Next(100_000).ToString(CultureInfo.InvariantCulture)));
                break;
            default:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
        }
    }

    private bool OneIn(int times) => random.Next(times) == 0;

    private T Pick<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];
}
