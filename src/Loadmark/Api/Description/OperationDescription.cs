using System.Globalization;
using System.Text.Json.Nodes;
using Loadmark.Api.Monitoring;
using Loadmark.Api.Requests;
using Loadmark.Questions;
using Loadmark.Shapes;
using Loadmark.Web.Problems;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>Puts what an address takes and answers into the document.</summary>
/// <param name="document">The document.</param>
/// <param name="operation">What the address takes and answers.</param>
internal sealed class OperationDescription(OpenApiDocument document, ApiOperation operation)
{
    private const string EventsAbout =
        "Asked for text/event-stream, the answer comes as server-sent events: 'progress' (Progress) from time to time, "
        + "then one 'answer' (what application/json would have held) or 'problem' (Problem).";

    /// <summary>Fills in an operation.</summary>
    public void Fill(OpenApiOperation target)
    {
        target.OperationId = operation.Name;
        target.Summary = operation.Summary;
        target.Description = string.Join(
            ' ', new[] { operation.About, operation.Streams ? EventsAbout : "" }.Where(static text => text.Length > 0));
        target.Tags = new HashSet<OpenApiTagReference> { new(operation.Group, document) };
        target.Parameters = [.. Parameters()];
        target.RequestBody = operation.Bodies.Count == 0 ? null : new OpenApiRequestBody
        {
            Required = true,
            Content = operation.Bodies.ToDictionary(static body => body.MediaType, Media),
        };
        target.Responses = Responses();
    }

    private IEnumerable<IOpenApiParameter> Parameters()
    {
        foreach (var part in operation.Names)
        {
            yield return new OpenApiParameter
            {
                Name = part.Name,
                In = ParameterLocation.Path,
                Required = true,
                Description = part.About,
                Example = part.Example is { } example ? JsonValue.Create(example) : null,
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = part.Format, Pattern = PatternOf(part.Words) },
            };
        }

        foreach (var option in operation.Options)
        {
            yield return new OpenApiParameter
            {
                Name = option.Name,
                In = ParameterLocation.Query,
                Description = option.Text,
                Schema = SchemaOf(option),
                Example = ExampleOf(option),
                Style = ParameterStyle.Form,
                Explode = true,
            };
        }

        if (operation.NeedsRevision)
        {
            // Not required of a generated client's caller by the compiler: without it the answer is 428.
            yield return new OpenApiParameter
            {
                Name = "If-Match",
                In = ParameterLocation.Header,
                Description = "The revision that the change starts from, in quotes.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String },
                Example = JsonValue.Create("\"3\""),
            };
        }
    }

    private OpenApiResponses Responses()
    {
        var responses = new OpenApiResponses();
        var good = new OpenApiResponse
        {
            Description = operation.Answers.Count == 0 ? "Done." : "The answer.",
            Content = operation.Answers.ToDictionary(static answer => answer.MediaType, Media),
        };
        if (operation.Streams)
            good.Content[ApiContent.Events] = new OpenApiMediaType { Schema = SchemaShape.Text("Server-sent events.") };
        if (operation.TellsRevision)
            good.Headers = Headers("ETag", "The revision, in quotes.");
        responses[operation.Status.ToString(CultureInfo.InvariantCulture)] = good;

        if (operation.Name == Health.Operation.Name)
        {
            responses["503"] = new OpenApiResponse
            {
                Description = "The same, where something is wrong.",
                Content = Body(ApiContent.Json, Reference(HealthJson.Health.Name)),
            };
            Add(responses, [ProblemKind.BadRequest, ProblemKind.NoKey, ProblemKind.Refused]);
            return responses;
        }

        IEnumerable<ProblemKind> always = [ProblemKind.BadRequest, ProblemKind.NoKey, ProblemKind.Refused, ProblemKind.Fault];
        IEnumerable<ProblemKind> ofBodies = operation.Bodies.Count == 0 ? [] : [ProblemKind.TooLarge, ProblemKind.UnsupportedMediaType];
        IEnumerable<ProblemKind> ofSolves = operation.Group == "Questions" || operation.Streams
            ? [ProblemKind.Busy, ProblemKind.OutOfTime]
            : [];
        IEnumerable<ProblemKind> ofRigs = operation.Names.Count > 0 ? [ProblemKind.NotFound] : [];
        Add(responses, [.. always, .. ofBodies, .. ofSolves, .. ofRigs, .. operation.Refusals]);
        return responses;
    }

    private void Add(OpenApiResponses responses, IEnumerable<ProblemKind> kinds)
    {
        foreach (var group in kinds.Distinct().GroupBy(static kind => kind.Status).OrderBy(static group => group.Key))
        {
            var response = new OpenApiResponse
            {
                Description = string.Join(" Or: ", group.Select(static kind => $"{kind.Title}. {kind.Meaning}")),
                Content = Body(ProblemAnswer.MediaType, Reference(ProblemShapes.Name)),
            };
            if (group.Contains(ProblemKind.Busy))
                response.Headers = Headers("Retry-After", "After how many seconds to ask again, s.");
            responses[group.Key.ToString(CultureInfo.InvariantCulture)] = response;
        }
    }

    private OpenApiMediaType Media(ApiContent content) => new()
    {
        Schema = SchemaOf(content.Value),
        Example = BuiltInExample.Of(content),
    };

    /// <summary>What the book of shapes has a name for is referred to.</summary>
    private IOpenApiSchema SchemaOf(ValueDescription value) =>
        value.ReferredTo is { Length: > 0 } name ? Reference(name) : SchemaShape.Of(value);

    private OpenApiSchemaReference Reference(string shape) => new(shape, document);

    private static Dictionary<string, OpenApiMediaType> Body(string mediaType, IOpenApiSchema schema) =>
        new(StringComparer.Ordinal) { [mediaType] = new() { Schema = schema } };

    private static Dictionary<string, IOpenApiHeader> Headers(string name, string about) => new(StringComparer.Ordinal)
    {
        [name] = new OpenApiHeader { Description = about, Schema = new OpenApiSchema { Type = JsonSchemaType.String } },
    };

    private static OpenApiSchema SchemaOf(OptionSpec option) => option.Kind switch
    {
        OptionKind.Flag => new OpenApiSchema { Type = JsonSchemaType.Boolean },
        OptionKind.Number => new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int64", Minimum = "0" },
        OptionKind.Texts => new OpenApiSchema { Type = JsonSchemaType.Array, Items = new OpenApiSchema { Type = JsonSchemaType.String } },
        _ => new OpenApiSchema { Type = JsonSchemaType.String, Pattern = PatternOf(option.Words) },
    };

    /// <summary>Words as a pattern: generators make a type of its own of each list of words, under a name that says nothing.</summary>
    private static string? PatternOf(IReadOnlyList<string> words) => words.Count == 0 ? null : $"^({string.Join('|', words)})$";

    private static JsonNode? ExampleOf(OptionSpec option) => option.Kind switch
    {
        OptionKind.Flag => JsonValue.Create(true),
        OptionKind.Number => JsonValue.Create(long.Parse(option.Example, CultureInfo.InvariantCulture)),
        OptionKind.Texts => new JsonArray(JsonValue.Create(option.Example)),
        _ => JsonValue.Create(option.Example),
    };
}
