using System.Globalization;
using Loadmark.Api.Requests;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Loadmark.Api.Description;

/// <summary>The OpenAPI document, made of what each address says of itself.</summary>
internal static class ApiDocument
{
    private const string Older = "openapi-3.0";
    private const string Key = "key";

    /// <summary>
    /// The documents' names: <c>/api/openapi.json</c> is OpenAPI 3.1, <c>/api/openapi-3.0.json</c> says the same to generators that know no
    /// newer one.
    /// </summary>
    public static IReadOnlyList<string> Names { get; } = ["openapi", Older];

    /// <summary>Says how a document is made.</summary>
    /// <param name="options">Of the library that makes it.</param>
    /// <param name="name">The document's name.</param>
    /// <param name="limits">How much may be asked, which the document tells.</param>
    public static void Describe(OpenApiOptions options, string name, ApiLimits limits)
    {
        options.OpenApiVersion = name == Older ? OpenApiSpecVersion.OpenApi3_0 : OpenApiSpecVersion.OpenApi3_1;
        options.ShouldInclude = static description => OperationOf(description.ActionDescriptor.EndpointMetadata) is not null;
        options.AddOperationTransformer(static (operation, context, _) =>
        {
            new OperationDescription(
                context.Document!, OperationOf(context.Description.ActionDescriptor.EndpointMetadata)!).Fill(operation);
            return Task.CompletedTask;
        });
        options.AddDocumentTransformer((document, context, _) =>
        {
            document.Info = new OpenApiInfo
            {
                Title = "Loadmark",
                Version = typeof(ApiDocument).Assembly.GetName().Version?.ToString(3),
                Description = string.Create(CultureInfo.InvariantCulture,
                    $"The answers of the commands, over HTTP, for programs on this machine. Figures are in SI units, named in their keys; "
                    + $"null is what is not known. At most {limits.LargestBody} bytes a body, {limits.LongestSolve.TotalSeconds:0.###} s a "
                    + $"computation, {limits.MostPresent} computations that wait or run."),
            };
            document.Servers = [];
            ShapeBook.AddTo(
                document,
                context.DescriptionGroups.SelectMany(static group => group.Items)
                    .Select(static description => OperationOf(description.ActionDescriptor.EndpointMetadata)).OfType<ApiOperation>());
            AddKey(document);
            return Task.CompletedTask;
        });
    }

    /// <summary>Says that every address asks for the key.</summary>
    private static void AddKey(OpenApiDocument document)
    {
        document.AddComponent(Key, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = "bearer",
            Description = "The key of this start of the program. The file loadmark-PORT.header of the folder that rigs are kept in holds "
                + "the header as a line.",
        });
        document.Security = [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(Key, document)] = [] }];
    }

    private static ApiOperation? OperationOf(IList<object> metadata) => metadata.OfType<ApiOperation>().FirstOrDefault();
}
