using System.Globalization;
using System.Text.Json.Nodes;
using Loadmark.Api.Library;
using Loadmark.Api.Monitoring;
using Loadmark.Api.Requests;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>Puts what an address takes and answers into the document.</summary>
/// <param name="document">The document.</param>
/// <param name="operation">What the address takes and answers.</param>
internal sealed class OperationDescription(OpenApiDocument document, ApiOperation operation)
{
    private const string EventsAbout =
        "Asked for text/event-stream, the answer comes as server-sent events: 'progress' (Progress) from time to time, then one 'answer' (what application/json would have held) or 'problem' (Problem).";

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
        if (operation.NamesRig)
        {
            yield return new OpenApiParameter
            {
                Name = "id",
                In = ParameterLocation.Path,
                Required = true,
                Description = "The rig.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = "uuid" },
            };
        }

        if (operation.NamesGear)
        {
            yield return InPath("kind", "What sort of thing it is: load, supply or lead.", PatternOf(GearAddress.Kinds), "load");
            yield return InPath("tag", "Its tag, capitals aside.", null, "delay-2");
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
        var good = new OpenApiResponse { Description = operation.Answers.Count == 0 ? "Done." : "The answer.", Content = operation.Answers.ToDictionary(static answer => answer.MediaType, Media) };
        if (operation.Streams)
            good.Content[ApiContent.Events] = new OpenApiMediaType { Schema = PlainShapes.Of("Events") };
        if (operation.TellsRevision)
            good.Headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal) { ["ETag"] = Header("The revision, in quotes.") };
        responses[operation.Status.ToString(CultureInfo.InvariantCulture)] = good;

        if (operation.Name == Health.Operation.Name)
        {
            responses["503"] = new OpenApiResponse { Description = "The same, where something is wrong.", Content = new Dictionary<string, OpenApiMediaType>(StringComparer.Ordinal) { [ApiContent.Json] = new() { Schema = Reference("Health") } } };
            Add(responses, [ProblemKind.BadRequest, ProblemKind.NoKey, ProblemKind.Refused]);
            return responses;
        }

        IEnumerable<ProblemKind> always = [ProblemKind.BadRequest, ProblemKind.NoKey, ProblemKind.Refused, ProblemKind.Fault];
        IEnumerable<ProblemKind> ofBodies = operation.Bodies.Count == 0 ? [] : [ProblemKind.TooLarge, ProblemKind.UnsupportedMediaType];
        IEnumerable<ProblemKind> ofSolves = operation.Group == "Questions" || operation.Streams
            ? [ProblemKind.Busy, ProblemKind.OutOfTime]
            : [];
        IEnumerable<ProblemKind> ofRigs = operation.NamesRig || operation.NamesGear ? [ProblemKind.NotFound] : [];
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
                Content = new Dictionary<string, OpenApiMediaType>(StringComparer.Ordinal) { [ProblemAnswer.MediaType] = new() { Schema = Reference("Problem") } },
            };
            if (group.Contains(ProblemKind.Busy))
                response.Headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal) { ["Retry-After"] = Header("After how many seconds to ask again, s.") };
            responses[group.Key.ToString(CultureInfo.InvariantCulture)] = response;
        }
    }

    private OpenApiMediaType Media(ApiContent content) => new()
    {
        Schema = content.MediaType == ApiContent.Json && content.Shape is not ("Rig" or "Gear")
            ? Reference(content.Shape)
            : PlainShapes.Of(content.Shape),
        Example = BuiltInExample.Of(content),
    };

    private OpenApiSchemaReference Reference(string shape) => new(shape, document);

    private static OpenApiHeader Header(string about) =>
        new() { Description = about, Schema = new OpenApiSchema { Type = JsonSchemaType.String } };

    private static OpenApiSchema SchemaOf(OptionSpec option) => option.Kind switch
    {
        OptionKind.Flag => new OpenApiSchema { Type = JsonSchemaType.Boolean },
        OptionKind.Number => new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int64", Minimum = "0" },
        OptionKind.Texts => new OpenApiSchema { Type = JsonSchemaType.Array, Items = new OpenApiSchema { Type = JsonSchemaType.String } },
        _ => new OpenApiSchema { Type = JsonSchemaType.String, Pattern = option.Words.Count > 0 ? PatternOf(option.Words) : null },
    };

    /// <summary>Words as a pattern: generators make a type of its own of each list of words, under a name that says nothing.</summary>
    private static string PatternOf(IReadOnlyList<string> words) => $"^({string.Join('|', words)})$";

    private static OpenApiParameter InPath(string name, string about, string? pattern, string example) => new()
    {
        Name = name,
        In = ParameterLocation.Path,
        Required = true,
        Description = about,
        Example = JsonValue.Create(example),
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, Pattern = pattern },
    };

    private static JsonNode? ExampleOf(OptionSpec option) => option.Kind switch
    {
        OptionKind.Flag => JsonValue.Create(true),
        OptionKind.Number => JsonValue.Create(long.Parse(option.Example, CultureInfo.InvariantCulture)),
        OptionKind.Texts => new JsonArray(JsonValue.Create(option.Example)),
        _ => JsonValue.Create(option.Example),
    };
}
