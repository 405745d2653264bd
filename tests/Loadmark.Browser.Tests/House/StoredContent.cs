using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace Loadmark.Browser.Tests.House;

/// <summary>
/// Puts rigs and gear into a running program, and takes them out, as another program does it over HTTP: an address can then be opened that no page
/// has led to.
/// </summary>
/// <param name="program">The program.</param>
/// <param name="openAsync">Opens another window, for what only the page tells; null where nobody asks.</param>
internal sealed class StoredContent(RunningProgram program, Func<Task<IPage>>? openAsync = null) : IDisposable
{
    private readonly HttpClient _client = new()
    {
        BaseAddress = program.Address,
        Timeout = Patience.Page,
        DefaultRequestHeaders = { Authorization = new AuthenticationHeaderValue("Bearer", program.Key) },
    };

    /// <summary>The address of each rig's page, by the rig's name; all names must differ.</summary>
    public async Task<IReadOnlyDictionary<string, string>> AddressesAsync() =>
        (await ListAsync("/api/rigs")).GetProperty("rigs").EnumerateArray()
            .ToDictionary(static rig => rig.GetProperty("name").GetString()!, static rig => $"/rig/{rig.GetProperty("id").GetString()}", StringComparer.Ordinal);

    /// <summary>Keeps a rig.</summary>
    /// <param name="text">Its file.</param>
    /// <returns>The address of its page.</returns>
    public async Task<string> AddRigAsync(string text)
    {
        using var answer = await PostAsync("/api/rigs", text);
        return "/rig/" + answer.Headers.Location!.OriginalString.Split('/')[^1];
    }

    /// <summary>Adds a load to the gear library.</summary>
    /// <param name="tag">Its tag.</param>
    /// <param name="label">What is printed on it.</param>
    public async Task AddLoadAsync(string tag, string label) =>
        (await PostAsync("/api/gear", $"loads:\n  {tag}: {{ label: \"{label}\" }}\n")).Dispose();

    /// <summary>The address of the page of a load in the gear library, which only the list on the page tells.</summary>
    /// <param name="tag">Its tag.</param>
    public async Task<string> AddressOfLoadAsync(string tag)
    {
        var list = await (openAsync ?? throw new InvalidOperationException("There is no window to ask in."))();
        await list.GotoAsync("/gear");
        var gear = await list.GetByRole(AriaRole.Link, new() { Name = tag, Exact = true }).GetAttributeAsync("href");
        await list.CloseAsync();
        return "/" + gear!.TrimStart('/');
    }

    /// <summary>Removes every rig.</summary>
    public async Task RemoveRigsAsync()
    {
        foreach (var rig in (await ListAsync("/api/rigs")).GetProperty("rigs").EnumerateArray())
            await RemoveAsync($"/api/rigs/{rig.GetProperty("id").GetString()}", rig);
    }

    /// <summary>Removes all gear from the library.</summary>
    public async Task RemoveGearAsync()
    {
        foreach (var gear in (await ListAsync("/api/gear")).GetProperty("gear").EnumerateArray())
            await RemoveAsync($"/api/gear/{gear.GetProperty("kind").GetString()}/{gear.GetProperty("tag").GetString()}", gear);
    }

    /// <inheritdoc/>
    public void Dispose() => _client.Dispose();

    private async Task<HttpResponseMessage> PostAsync(string target, string text)
    {
        using var content = new StringContent(text, Encoding.UTF8, "application/yaml");
        var answer = await _client.PostAsync(new Uri(target, UriKind.Relative), content);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
        return answer;
    }

    private async Task<JsonElement> ListAsync(string target)
    {
        using var list = JsonDocument.Parse(await _client.GetStringAsync(new Uri(target, UriKind.Relative)));
        return list.RootElement.Clone();
    }

    private async Task RemoveAsync(string target, JsonElement kept)
    {
        using var request = new HttpRequestMessage(HttpMethod.Delete, new Uri(target, UriKind.Relative));
        request.Headers.IfMatch.Add(new EntityTagHeaderValue($"\"{kept.GetProperty("revision").GetInt64()}\""));
        using var answer = await _client.SendAsync(request);
        Assert.True(answer.IsSuccessStatusCode, $"{target} could not be removed: {(int)answer.StatusCode}");
    }
}
