using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>The sheet over HTTP: as a program asks for it, and as the page hands it to the browser.</summary>
public sealed class SheetAnswersTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private static readonly string Pit = File.ReadAllText(Repository.PathOf("examples", "pit.rig.yaml"));

    [Theory]
    [InlineData(null, "application/pdf", "%PDF-")]
    [InlineData("image/svg+xml", "image/svg+xml", "<svg ")]
    [InlineData("image/png", "image/png", "\u0089PNG")]
    public async Task It_comes_as_it_is_asked_for(string? accepts, string type, string beginning)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/sheet?only=player")
        {
            Content = new StringContent(Pit, Encoding.UTF8, "application/yaml"),
        };
        if (accepts is not null)
            request.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue(accepts));
        using var answer = await shared.Host.Client.SendAsync(request, RunningHost.Stop);
        Assert.Equal((HttpStatusCode.OK, type), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
        Assert.StartsWith(beginning, Encoding.Latin1.GetString(await answer.Content.ReadAsByteArrayAsync(RunningHost.Stop)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_meant_is_refused()
    {
        using var answer = await shared.Host.PostAsync("/api/sheet?paper=a3", Pit, "application/yaml");
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("paper", await answer.Content.ReadAsStringAsync(RunningHost.Stop), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_hands_out_the_sheet_of_a_kept_rig()
    {
        using var kept = await shared.Host.PostAsync("/api/rigs", Pit, "application/yaml");
        using var stored = JsonDocument.Parse(await kept.Content.ReadAsStringAsync(RunningHost.Stop));
        var id = stored.RootElement.GetProperty("id").GetString();
        using var answer = await shared.Host.Client.GetAsync($"/rig/{id}/paper?only=feeds&only=player&paper=letter&labels=&contact=the+workshop&as=pdf", RunningHost.Stop);
        Assert.Equal((HttpStatusCode.OK, "application/pdf"), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
        Assert.Equal("inline", answer.Content.Headers.ContentDisposition?.DispositionType);
        Assert.Equal("pit-board-bass-chair.sheet.pdf", answer.Content.Headers.ContentDisposition?.FileNameStar ?? answer.Content.Headers.ContentDisposition?.FileName);
        using var refused = await shared.Host.Client.GetAsync($"/rig/{id}/paper?labels=tiny", RunningHost.Stop);
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        using var missing = await shared.Host.Client.GetAsync($"/rig/{Guid.NewGuid()}/paper", RunningHost.Stop);
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);
    }
}
