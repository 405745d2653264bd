using System.Text;
using Loadmark.Api.Description;
using Loadmark.Api.Execution;
using Loadmark.Api.Library;
using Loadmark.Api.Monitoring;
using Loadmark.Api.Requests;
using Loadmark.Api.StoredRigs;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Microsoft.AspNetCore.Routing.Constraints;

namespace Loadmark.Api;

/// <summary>The addresses at which other programs get the answers that the commands give.</summary>
internal static class ApiEndpoints
{
    /// <summary>Adds what the addresses need. The page's services have to be there.</summary>
    /// <param name="services">Where to.</param>
    /// <param name="limits">How much may be asked.</param>
    public static IServiceCollection AddApi(this IServiceCollection services, ApiLimits limits)
    {
        services.AddSingleton(limits);

        // The slim builder leaves it out; the documents' names are told apart by it.
        services.Configure<RouteOptions>(static options => options.SetParameterPolicy<RegexInlineRouteConstraint>("regex"));
        services.AddSingleton<RequestReader>();
        services.AddSingleton<ApiGate>();
        services.AddSingleton<QuestionEndpoint>();
        services.AddSingleton<StoreRequests>();
        services.AddSingleton<RigsEndpoint>();
        services.AddSingleton<GearEndpoint>();
        services.AddSingleton<GearFileEndpoint>();
        services.AddSingleton<AffectedEndpoint>();
        services.AddSingleton<Health>();
        foreach (var name in ApiDocument.Names)
            services.AddOpenApi(name, options => ApiDocument.Describe(options, name, limits));
        return services;
    }

    /// <summary>Maps the addresses.</summary>
    /// <param name="routes">Where to.</param>
    public static IEndpointRouteBuilder MapApi(this IEndpointRouteBuilder routes)
    {
        foreach (var question in QuestionsOf(routes.ServiceProvider))
        {
            routes.MapPost(
                $"/api/{question.Operation.Name}",
                Task<IResult> (HttpContext context, QuestionEndpoint endpoint) => endpoint.AnswerAsync(context, question))
                .WithMetadata(question.Operation);

            // The page's own answer to whatever it does not know would be that there is no such address.
            routes.MapGet($"/api/{question.Operation.Name}", static IResult (HttpContext context) =>
            {
                context.Response.Headers.Allow = HttpMethods.Post;
                return new ProblemResult(new Problem(ProblemKind.MethodNotAllowed, "A question is asked with POST."));
            });
        }

        routes.MapGet("/api/rigs", static Task<IResult> (HttpContext context, RigsEndpoint rigs) => rigs.ListAsync(context))
            .WithMetadata(RigsOperations.List);
        routes.MapPost("/api/rigs", static Task<IResult> (HttpContext context, RigsEndpoint rigs) => rigs.AddAsync(context))
            .WithMetadata(RigsOperations.Add);
        routes.MapGet(
            "/api/rigs/{id:guid}",
            static Task<IResult> (HttpContext context, RigsEndpoint rigs, Guid id) =>
                rigs.GetAsync(context, id)).WithMetadata(RigsOperations.Get);
        routes.MapPut(
            "/api/rigs/{id:guid}",
            static Task<IResult> (HttpContext context, RigsEndpoint rigs, Guid id) =>
                rigs.SaveAsync(context, id)).WithMetadata(RigsOperations.Save);
        routes.MapDelete(
            "/api/rigs/{id:guid}", static Task<IResult> (HttpContext context, RigsEndpoint rigs, Guid id) => rigs.RemoveAsync(context, id))
            .WithMetadata(RigsOperations.Remove);
        MapGear(routes);
        routes.MapGet("/healthz", static Task<IResult> (HttpContext context, Health health) => health.AnswerAsync(context))
            .WithMetadata(Health.Operation);
        routes.MapGet(
            ProblemKind.Folder + "{name}",
            static IResult (string name) => ProblemKind.All.FirstOrDefault(kind => kind.Name == name) is { } kind
                ? Results.Text($"{kind.Title} ({kind.Status})\n{kind.Meaning}\n", "text/plain", Encoding.UTF8)
                : new ProblemResult(new Problem(ProblemKind.NotFound, "There is no such kind of problem.")));
        routes.MapOpenApi("/api/{documentName:regex(^(openapi|openapi-3\\.0)$)}.json");
        return routes;
    }

    /// <summary>The questions, found in the program by what they are, in the order of their specifications.</summary>
    private static IEnumerable<IQuestion> QuestionsOf(IServiceProvider services)
    {
        var order = QuestionSpecs.Questions.Select(static spec => spec.Name).ToList();
        return typeof(IQuestion).Assembly.GetTypes()
            .Where(static type => type.IsAssignableTo(typeof(IQuestion)) && !type.IsAbstract)
            .Select(type => (IQuestion)ActivatorUtilities.CreateInstance(services, type))
            .OrderBy(question => order.IndexOf(question.Operation.Name));
    }

    private static void MapGear(IEndpointRouteBuilder routes)
    {
        const string One = "/api/gear/{kind}/{tag}";
        routes.MapGet("/api/gear", static Task<IResult> (HttpContext context, GearEndpoint gear) => gear.ListAsync(context))
            .WithMetadata(GearOperations.List);
        routes.MapPost("/api/gear", static Task<IResult> (HttpContext context, GearEndpoint gear) => gear.AddAsync(context))
            .WithMetadata(GearOperations.Add);
        routes.MapGet(
            One,
            static Task<IResult> (HttpContext context, GearEndpoint gear, string kind, string tag) =>
                gear.GetAsync(context, kind, tag)).WithMetadata(GearOperations.Get);
        routes.MapPut(
            One,
            static Task<IResult> (HttpContext context, GearEndpoint gear, string kind, string tag) => gear.ChangeAsync(context, kind, tag))
            .WithMetadata(GearOperations.Change);
        routes.MapDelete(
            One,
            static Task<IResult> (HttpContext context, GearEndpoint gear, string kind, string tag) => gear.RemoveAsync(context, kind, tag))
            .WithMetadata(GearOperations.Remove);
        routes.MapPost(
            $"{One}/readings",
            static Task<IResult> (HttpContext context, GearEndpoint gear, string kind, string tag) => gear.MeasureAsync(context, kind, tag))
            .WithMetadata(GearOperations.Measure);
        routes.MapGet(
            $"{One}/affected",
            static Task<IResult> (HttpContext context, AffectedEndpoint affected, string kind, string tag) =>
                affected.AnswerAsync(context, kind, tag))
            .WithMetadata(GearOperations.Affected);
        routes.MapPost("/api/gear/import", static Task<IResult> (HttpContext context, GearFileEndpoint files) => files.ImportAsync(context))
            .WithMetadata(GearOperations.Import);
        routes.MapGet("/api/gear/export", static Task<IResult> (HttpContext context, GearFileEndpoint files) => files.ExportAsync(context))
            .WithMetadata(GearOperations.Export);
    }
}
