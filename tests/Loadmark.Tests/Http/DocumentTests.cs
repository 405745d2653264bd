using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Loadmark.Web.Problems;

namespace Loadmark.Tests.Http;

/// <summary>The OpenAPI document is whole, and its examples are what is really answered.</summary>
public sealed partial class DocumentTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private static readonly string Examples = Repository.PathOf("src", "Loadmark", "Api", "Examples");

    private JsonNode Document => shared.Shapes.Document;

    [Fact]
    public void Every_address_is_in_it()
    {
        Assert.Equal("3.1", Document["openapi"]!.GetValue<string>()[..3]);
        Assert.Equal(
            ["/api/accept post", "/api/ask post", "/api/buy post", "/api/check post", "/api/gear get", "/api/gear post", "/api/gear/export get", "/api/gear/import post", "/api/gear/{kind}/{tag} delete",
             "/api/gear/{kind}/{tag} get", "/api/gear/{kind}/{tag} put", "/api/gear/{kind}/{tag}/affected get", "/api/gear/{kind}/{tag}/readings post", "/api/netlist post", "/api/plan post", "/api/read post", "/api/rigs get", "/api/rigs post", "/api/rigs/{id} delete",
             "/api/rigs/{id} get", "/api/rigs/{id} put", "/api/settle post", "/api/sheet post", "/api/startup post", "/healthz get"],
            shared.Shapes.Operations.Select(static operation => $"{operation.Path} {operation.Method}").Order(StringComparer.Ordinal));
    }

    /// <summary>Generated clients are made of it: whatever changes in it is to be seen, and meant.</summary>
    [Theory]
    [InlineData("openapi.json")]
    [InlineData("openapi-3.0.json")]
    public async Task It_is_published_to_the_letter_as_it_is_kept(string name)
    {
        var text = await shared.Host.Client.GetStringAsync("/api/" + name, RunningHost.Stop);
        var version = Document["info"]!["version"]!.GetValue<string>();
        Expected.Matches(name, text.Replace($"\"version\": \"{version}\"", "\"version\": \"(of the program)\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Everything_it_refers_to_is_there()
    {
        var names = Document["components"]!["schemas"]!.AsObject().Select(static schema => schema.Key).ToHashSet(StringComparer.Ordinal);
        var referred = References().Matches(Document.ToJsonString()).Select(static match => match.Groups["name"].Value).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(referred.Except(names));
        Assert.Equal(["Progress"], names.Except(referred)); // it is within events, which no schema describes
    }

    [Fact]
    public void Everything_is_described()
    {
        foreach (var (path, method, operation) in shared.Shapes.Operations)
        {
            Assert.NotEmpty(operation["summary"]!.GetValue<string>());
            Assert.NotEmpty(operation["operationId"]!.GetValue<string>());
            foreach (var parameter in operation["parameters"]?.AsArray() ?? [])
                Assert.NotEmpty(parameter!["description"]!.GetValue<string>());
            foreach (var (status, response) in operation["responses"]!.AsObject())
            {
                Assert.NotEmpty(response!["description"]!.GetValue<string>());
                if (status[0] is '4' or '5' && path != "/healthz")
                    Assert.NotNull(response["content"]!["application/problem+json"]!["schema"]);
            }

            Assert.All((string[])["400", "401", "403"], status => Assert.True(operation["responses"]![status] is not null, $"{method} {path} {status}"));
        }

        foreach (var (name, schema) in Document["components"]!["schemas"]!.AsObject())
            AssertDescribed(name, schema!);
    }

    [Fact]
    public async Task The_examples_are_what_is_answered()
    {
        var rig = Read("board.rig.yaml");
        await AssertAnsweredAsync("read.json", "/api/read", Read("texts.json"), "application/json");
        await AssertAnsweredAsync("check.json", "/api/check?file=board.rig.yaml", rig);
        await AssertAnsweredAsync("plan.json", "/api/plan", rig);
        await AssertAnsweredAsync("ask.json", "/api/ask", Read("ask.request.json"), "application/json");
        await AssertAnsweredAsync("accept.json", "/api/accept", Read("accept.request.json"), "application/json");
        await AssertAnsweredAsync("buy.json", "/api/buy", Read("buy.request.json"), "application/json");
        await AssertAnsweredAsync("settle.json", "/api/settle", rig);
        await AssertAnsweredAsync("startup.json", "/api/startup", rig);
        await AssertAnsweredAsync("netlist.txt", "/api/netlist", rig);
        foreach (var (shape, name) in (ReadOnlySpan<(string, string)>)[("KeptRig", "rig.json"), ("RigList", "rigs.json"), ("Health", "health.json")])
            shared.Shapes.AssertFits(shape, Read(name));
        using var lines = await shared.Host.PostAsync("/api/read", Read("texts.txt"), "text/plain");
        Assert.Equal(await (await shared.Host.PostAsync("/api/read", Read("texts.json"), "application/json")).Content.ReadAsStringAsync(RunningHost.Stop), await lines.Content.ReadAsStringAsync(RunningHost.Stop));
        using var json = await shared.Host.PostAsync("/api/check", Read("board.rig.json"), "application/json");
        Assert.True(json.IsSuccessStatusCode);
    }

    [Fact]
    public async Task Kinds_of_problems_explain_themselves()
    {
        foreach (var kind in ProblemKind.All)
            Assert.Contains(kind.Title, await shared.Host.Client.GetStringAsync(ProblemKind.Folder + kind.Name, RunningHost.Stop), StringComparison.Ordinal);
        await RunningHost.ProblemOfAsync(await shared.Host.Client.GetAsync(ProblemKind.Folder + "none", RunningHost.Stop), 404, "not-found");
    }

    [Fact]
    public async Task The_page_of_docs_names_every_address_option_and_problem()
    {
        var page = await File.ReadAllTextAsync(Repository.PathOf("docs", "api.md"), RunningHost.Stop);
        foreach (var (path, _, operation) in shared.Shapes.Operations)
        {
            Assert.Contains(path, page, StringComparison.Ordinal);
            foreach (var parameter in operation["parameters"]?.AsArray() ?? [])
                Assert.Contains($"`{parameter!["name"]!.GetValue<string>()}`", page, StringComparison.Ordinal);
        }

        Assert.All(ProblemKind.All, kind => Assert.Contains($"`{kind.Name}`", page, StringComparison.Ordinal));
    }

    private static void AssertDescribed(string where, JsonNode schema)
    {
        if (schema["$ref"] is not null || schema["oneOf"] is not null)
            return;
        Assert.True(schema["description"] is not null, $"{where} has no description");
        foreach (var (name, inner) in schema["properties"]?.AsObject() ?? [])
            AssertDescribed($"{where}.{name}", inner!);
        if (schema["items"] is { } items)
            AssertDescribed($"{where}[]", items);
    }

    private static string Read(string name) => File.ReadAllText(Path.Combine(Examples, name));

    private async Task AssertAnsweredAsync(string name, string address, string body, string mediaType = "application/yaml")
    {
        using var answer = await shared.Host.PostAsync(address, body, mediaType);
        var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        Assert.True(answer.IsSuccessStatusCode, text);
        if (Environment.GetEnvironmentVariable("LOADMARK_UPDATE_EXPECTED") == "1")
            await File.WriteAllTextAsync(Path.Combine(Examples, name), text, RunningHost.Stop);
        Assert.Equal(Read(name), text);
    }

    [GeneratedRegex("\"#/components/schemas/(?<name>[A-Za-z]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex References();
}
