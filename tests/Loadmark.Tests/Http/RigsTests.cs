using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>Kept rigs over HTTP: nobody's edit is lost.</summary>
public sealed class RigsTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private const string Text = "# kept to the letter\r\nrig: Small board\nloads:\n  drive-3: { label: \"9V DC 12mA\" }\n";

    private RunningHost Host => shared.Host;

    [Fact]
    public async Task A_rig_is_kept_to_the_letter_and_listed()
    {
        var (id, revision) = await AddAsync(Text);
        Assert.Equal("\"1\"", revision);
        using var answer = await Host.Client.GetAsync($"/api/rigs/{id}", RunningHost.Stop);
        var json = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        shared.Shapes.AssertFits("KeptRig", json);
        using var rig = JsonDocument.Parse(json);
        Assert.Equal(Text, rig.RootElement.GetProperty("text").GetString());
        Assert.Equal("Small board", rig.RootElement.GetProperty("name").GetString());
        Assert.Equal(revision, answer.Headers.ETag?.Tag);
        var list = await Host.Client.GetStringAsync("/api/rigs", RunningHost.Stop);
        shared.Shapes.AssertFits("RigList", list);
        Assert.Contains(id, list, StringComparison.Ordinal);
        Assert.Equal(Text, (await Host.Store.Rigs.FindAsync(Guid.Parse(id), RunningHost.Stop))?.Text);
    }

    [Fact]
    public async Task Two_clients_on_one_rig_and_the_second_is_told()
    {
        var (id, revision) = await AddAsync(Text);
        using var first = Host.NewClient();
        using var second = Host.NewClient();
        var (ours, theirs) = (Text + "# ours\n", Text + "# theirs\n");

        using var saved = await SaveAsync(first, id, revision, ours, "?what=changing%20a%20comment");
        Assert.Equal(HttpStatusCode.OK, saved.StatusCode);
        Assert.Equal("\"2\"", saved.Headers.ETag?.Tag);
        using var refused = await SaveAsync(second, id, revision, theirs);
        var problem = await RunningHost.ProblemOfAsync(refused, 412, "conflict");
        shared.Shapes.AssertFits("Problem", problem.GetRawText());
        Assert.Equal(ours, problem.GetProperty("present").GetProperty("text").GetString());
        Assert.Equal("changing a comment", problem.GetProperty("present").GetProperty("undo").GetString());

        using var after = await SaveAsync(second, id, $"\"{problem.GetProperty("present").GetProperty("revision").GetInt64()}\"", theirs);
        Assert.Equal(HttpStatusCode.OK, after.StatusCode);
        Assert.Equal(theirs, (await Host.Store.Rigs.FindAsync(Guid.Parse(id), RunningHost.Stop))?.Text);
    }

    [Fact]
    public async Task Many_at_once_and_each_edit_is_kept_or_told()
    {
        var (id, _) = await AddAsync(Text);
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 20).Select(async number =>
        {
            using var client = Host.NewClient();
            using var answer = await SaveAsync(client, id, "\"1\"", $"{Text}# {number}\n");
            return answer.StatusCode;
        }));
        Assert.Single(outcomes, HttpStatusCode.OK);
        Assert.Equal(19, outcomes.Count(static status => status == HttpStatusCode.PreconditionFailed));
    }

    [Theory]
    [InlineData(null, 428, "revision-missing")]
    [InlineData("*", 400, "bad-request")]
    [InlineData("1", 400, "bad-request")]
    [InlineData("\"1\", \"2\"", 400, "bad-request")]
    [InlineData("W/\"1\"", 412, "conflict")]
    [InlineData("\"0\"", 412, "conflict")]
    [InlineData("\"99999999999999999999\"", 412, "conflict")]
    [InlineData("\"one\"", 412, "conflict")]
    public async Task A_change_says_where_it_starts_from(string? revision, int status, string kind)
    {
        var (id, _) = await AddAsync(Text);
        await RunningHost.ProblemOfAsync(await SaveAsync(Host.Client, id, revision, Text + "#\n"), status, kind);
        using var remove = new HttpRequestMessage(HttpMethod.Delete, $"/api/rigs/{id}");
        if (revision is not null)
            remove.Headers.TryAddWithoutValidation("If-Match", revision);
        await RunningHost.ProblemOfAsync(await Host.Client.SendAsync(remove, RunningHost.Stop), status, kind);
        Assert.Equal(Text, (await Host.Store.Rigs.FindAsync(Guid.Parse(id), RunningHost.Stop))?.Text);
    }

    [Fact]
    public async Task What_cannot_be_read_is_not_kept()
    {
        var (id, revision) = await AddAsync(Text);
        await RunningHost.ProblemOfAsync(await SaveAsync(Host.Client, id, revision, "rig: ["), 422, "unreadable");
        await RunningHost.ProblemOfAsync(await Host.PostAsync("/api/rigs", "loads: 3"), 422, "unreadable");
        Assert.Equal(Text, (await Host.Store.Rigs.FindAsync(Guid.Parse(id), RunningHost.Stop))?.Text);
    }

    [Fact]
    public async Task A_removed_rig_is_gone_and_can_be_brought_back_on_the_page()
    {
        var (id, revision) = await AddAsync(Text);
        using var remove = new HttpRequestMessage(HttpMethod.Delete, $"/api/rigs/{id}");
        remove.Headers.IfMatch.Add(EntityTagHeaderValue.Parse(revision));
        Assert.Equal(HttpStatusCode.NoContent, (await Host.Client.SendAsync(remove, RunningHost.Stop)).StatusCode);
        await RunningHost.ProblemOfAsync(await Host.Client.GetAsync($"/api/rigs/{id}", RunningHost.Stop), 404, "not-found");
        await RunningHost.ProblemOfAsync(await SaveAsync(Host.Client, id, revision, Text), 404, "not-found");
        Assert.NotNull((await Host.Store.Rigs.RestoreAsync(Guid.Parse(id), RunningHost.Stop)).Rig);
    }

    [Theory]
    [InlineData("/api/rigs/00000000-0000-0000-0000-000000000000")]
    [InlineData("/api/rigs/none")]
    [InlineData("/api/nowhere")]
    [InlineData("/api")]
    [InlineData("/api/other.json")]
    public async Task What_is_not_there(string address) =>
        await RunningHost.ProblemOfAsync(await Host.Client.GetAsync(address, RunningHost.Stop), 404, "not-found");

    private async Task<(string Id, string Revision)> AddAsync(string text)
    {
        using var answer = await Host.PostAsync("/api/rigs", text);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var json = await answer.Content.ReadAsStringAsync(RunningHost.Stop);
        shared.Shapes.AssertFits("KeptRig", json);
        using var rig = JsonDocument.Parse(json);
        var id = rig.RootElement.GetProperty("id").GetString()!;
        Assert.Equal($"/api/rigs/{id}", answer.Headers.Location?.ToString());
        return (id, answer.Headers.ETag!.Tag);
    }

    private static async Task<HttpResponseMessage> SaveAsync(HttpClient client, string id, string? revision, string text, string query = "")
    {
        using var request = new HttpRequestMessage(HttpMethod.Put, $"/api/rigs/{id}{query}") { Content = new StringContent(text, Encoding.UTF8, "application/yaml") };
        if (revision is not null)
            request.Headers.TryAddWithoutValidation("If-Match", revision);
        return await client.SendAsync(request, RunningHost.Stop);
    }
}
