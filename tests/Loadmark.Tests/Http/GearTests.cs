using System.Net;
using System.Text;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>The gear library over HTTP: nobody's change is lost, and what cannot be done is told.</summary>
public sealed class GearTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private RunningHost Host => shared.Host;

    [Fact]
    public async Task Two_clients_on_one_piece_and_the_second_is_told()
    {
        var (address, revision) = await AddAsync("touch-1", "label: 9V 100mA");
        using var first = await Host.SendAsync(HttpMethod.Put, address + "?what=ours", Piece("touch-1", "label: 9V 110mA"), revision: revision);
        Assert.Equal((HttpStatusCode.OK, "\"2\""), (first.StatusCode, first.Headers.ETag?.Tag));
        var problem = await RunningHost.ProblemOfAsync(await Host.SendAsync(HttpMethod.Put, address, Piece("touch-1", "label: 9V 120mA"), revision: revision), 412, "conflict");
        shared.Shapes.AssertFits("Problem", problem.GetRawText());
        var present = problem.GetProperty("presentGear");
        Assert.Equal(("9V 110mA", "ours"), (present.GetProperty("label").GetString(), present.GetProperty("changes")[1].GetProperty("what").GetString()));
        await RunningHost.ProblemOfAsync(await Host.SendAsync(HttpMethod.Delete, address, revision: revision), 412, "conflict");

        using var after = await Host.SendAsync(HttpMethod.Put, address, Piece("touch-1", "label: 9V 120mA"), revision: $"\"{present.GetProperty("revision").GetInt64()}\"");
        Assert.Equal("\"3\"", after.Headers.ETag?.Tag);
        using var removed = await Host.SendAsync(HttpMethod.Delete, address, revision: "\"3\"");
        Assert.Equal(HttpStatusCode.NoContent, removed.StatusCode);
        await RunningHost.ProblemOfAsync(await Host.Client.GetAsync(address, RunningHost.Stop), 404, "not-found");
        await RunningHost.ProblemOfAsync(await Host.SendAsync(HttpMethod.Put, address, Piece("touch-1", "label: 9V 1A"), revision: "\"3\""), 404, "not-found");
    }

    [Fact]
    public async Task Many_at_once_and_each_change_is_kept_or_told()
    {
        var (address, revision) = await AddAsync("match-1", "label: 9V 100mA");
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 12).Select(async number =>
        {
            using var answer = await Host.SendAsync(HttpMethod.Put, address, Piece("match-1", $"label: 9V {number + 1}mA"), revision: revision);
            return answer.StatusCode;
        }));
        Assert.Single(outcomes, HttpStatusCode.OK);
        Assert.Equal(11, outcomes.Count(static status => status == HttpStatusCode.PreconditionFailed));
    }

    [Fact]
    public async Task A_piece_as_YAML_goes_back_as_a_change_and_may_have_another_tag()
    {
        var (address, revision) = await AddAsync("spare-1", "label: 9V 100mA, words: [pit]");
        using var file = await Host.SendAsync(HttpMethod.Get, address, accept: "application/yaml");
        Assert.Equal(revision, file.Headers.ETag?.Tag);
        var text = await file.Content.ReadAsStringAsync(RunningHost.Stop);
        using var same = await Host.SendAsync(HttpMethod.Put, address, text, revision: revision);
        Assert.Equal(revision, same.Headers.ETag?.Tag);
        using var renamed = await Host.SendAsync(HttpMethod.Put, address, text.Replace("spare-1", "spare-2/b", StringComparison.Ordinal), revision: revision);
        Assert.Equal(HttpStatusCode.OK, renamed.StatusCode);
        using var found = await Host.Client.GetAsync("/api/gear/load/SPARE-2%2Fb", RunningHost.Stop);
        Assert.Equal(HttpStatusCode.OK, found.StatusCode);
        await RunningHost.ProblemOfAsync(await Host.Client.GetAsync(address, RunningHost.Stop), 404, "not-found");
    }

    [Fact]
    public async Task A_tag_is_one_pieces()
    {
        await AddAsync("trial-1", "label: 9V 100mA");
        var (address, revision) = await AddAsync("trial-2", "label: 9V 200mA");
        foreach (var answer in (HttpResponseMessage[])[
            await Host.PostAsync("/api/gear", Piece("TRIAL-1", "label: 9V 1A")), await Host.SendAsync(HttpMethod.Put, address, Piece("TRIAL-1", "label: 9V 1A"), revision: revision)])
        {
            var problem = await RunningHost.ProblemOfAsync(answer, 409, "tag-taken");
            shared.Shapes.AssertFits("Problem", problem.GetRawText());
            Assert.Equal("9V 100mA", problem.GetProperty("presentGear").GetProperty("label").GetString());
        }
    }

    [Theory]
    [InlineData(null, 428, "revision-missing")]
    [InlineData("*", 400, "bad-request")]
    [InlineData("W/\"1\"", 412, "conflict")]
    [InlineData("\"one\"", 412, "conflict")]
    public async Task A_change_says_where_it_starts_from(string? revision, int status, string kind)
    {
        var tag = "RV-" + Convert.ToHexString(Encoding.UTF8.GetBytes(revision ?? ""));
        var (address, _) = await AddAsync(tag, "label: 9V 100mA");
        await RunningHost.ProblemOfAsync(await Host.SendAsync(HttpMethod.Put, address, Piece(tag, "label: 9V 1A"), revision: revision), status, kind);
        await RunningHost.ProblemOfAsync(await Host.SendAsync(HttpMethod.Delete, address, revision: revision), status, kind);
        Assert.Contains("9V 100mA", await Host.Client.GetStringAsync(address, RunningHost.Stop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("GET", "/api/gear?kind=pedal", null, 400, "kind: expected load or supply or lead, found 'pedal'.")]
    [InlineData("GET", "/api/gear?most=few", null, 400, "most: expected a whole number")]
    [InlineData("GET", "/api/gear/export?form=xml", null, 400, "form: expected yaml or csv")]
    [InlineData("GET", "/api/gear/pedal/delay-2", null, 404, "There are: load, supply, lead.")]
    [InlineData("GET", "/api/gear/load/none", null, 404, "The library has no load with that tag.")]
    [InlineData("GET", "/api/gear/load/none/affected", null, 404, "The library has no load with that tag.")]
    [InlineData("POST", "/api/gear", "{\"loads\":{}}", 400, "one piece of gear, and has 0")]
    [InlineData("POST", "/api/gear", "{\"loads\":{\"A\":{},\"B\":{}}}", 400, "one piece of gear, and has 2")]
    [InlineData("POST", "/api/gear", "{\"loads\":{\"A\":{\"runn\":\"1 mA\"}}}", 422, "runn")]
    [InlineData("POST", "/api/gear", "{\"loads\":{\"A\":{\"name\":\"a\\u0000b\"}}}", 422, "control character")]
    [InlineData("POST", "/api/gear", "{\"loads\":{\"A\":{\"words\":[\"a\\u0000b\"]}}}", 422, "control character")]
    [InlineData("POST", "/api/gear", "{\"pedals\":{\"A\":{}}}", 422, "not a section of a file of gear")]
    [InlineData("POST", "/api/gear/import", "[", 422, "")]
    [InlineData("POST", "/api/gear/import?take=other-99", "{\"loads\":{\"A\":{}}}", 400, "take: there is no other-99 to take. Nothing was changed.")]
    [InlineData("POST", "/api/gear/load/memo-1/readings", "{}", 400, "run or start")]
    [InlineData("POST", "/api/gear/load/memo-1/readings", "{\"run\":\"lots\"}", 400, "run: expected a current such as 300 mA")]
    [InlineData("POST", "/api/gear/load/memo-1/readings", "{\"run\":3}", 400, "run has to be a text.")]
    [InlineData("POST", "/api/gear/load/memo-1/readings", "{\"run\":\"1 mA\",\"meter\":\"good\"}", 400, "meter: expected the meter's accuracy")]
    [InlineData("POST", "/api/gear/load/memo-1/readings", "{\"run\":\"1 mA\",\"note\":\"\\u0000\"}", 400, "note has to be a text.")]
    [InlineData("POST", "/api/gear/load/memo-1/readings", "{\"walk\":\"1 mA\"}", 400, "run and start and meter and note")]
    [InlineData("POST", "/api/gear/supply/memo-2/readings", "{\"run\":\"1 mA\"}", 400, "Only loads draw")]
    [InlineData("PUT", "/api/gear/load/memo-1", "{\"supplies\":{\"memo-1\":{\"label\":\"9V 1A\",\"outlets\":{\"1\":\"\"}}}}", 400, "Gear stays of the kind that it is.")]
    public async Task What_cannot_be_done_is_told(string method, string address, string? body, int status, string detail)
    {
        using var made = await Host.PostAsync("/api/gear/import?take=new", "loads: { memo-1: { label: 9V 100mA } }\nsupplies: { memo-2: { label: 9V 1A, outlets: { 1: } } }");
        var before = await Host.Client.GetStringAsync("/api/gear/load/memo-1", RunningHost.Stop);
        using var answer = await Host.SendAsync(new HttpMethod(method), address, body, "application/json", revision: method == "PUT" ? "\"1\"" : null);
        var problem = await RunningHost.ProblemOfAsync(answer, status, status switch { 404 => "not-found", 422 => "unreadable", _ => "bad-request" });
        shared.Shapes.AssertFits("Problem", problem.GetRawText());
        Assert.Contains(detail, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(before, await Host.Client.GetStringAsync("/api/gear/load/memo-1", RunningHost.Stop));
    }

    private static string Piece(string tag, string says) => $"loads: {{ {tag}: {{ {says} }} }}";

    private async Task<(string Address, string Revision)> AddAsync(string tag, string says)
    {
        using var answer = await Host.PostAsync("/api/gear", JsonSerializer.Serialize(Piece(tag, says)), "application/json");
        var text = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        Assert.True(answer.StatusCode == HttpStatusCode.Created, text);
        shared.Shapes.AssertFits("GearShown", text);
        Assert.Equal($"/api/gear/load/{tag}", answer.Headers.Location?.ToString());
        return (answer.Headers.Location!.ToString(), answer.Headers.ETag!.Tag);
    }
}
