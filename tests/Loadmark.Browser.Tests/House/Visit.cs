using System.Collections.Concurrent;

namespace Loadmark.Browser.Tests.House;

/// <summary>
/// A browser window on the page that writes down whatever a good page never does: an error or a warning in the console, a script that
/// stops, a box that a script opens, a request that leaves this machine.
/// </summary>
internal sealed class Visit : IAsyncDisposable
{
    private readonly ConcurrentQueue<string> _complaints = [];
    private readonly ConcurrentQueue<string> _requests = [];
    private readonly string _own;

    private Visit(IBrowserContext context, Uri address)
    {
        Context = context;
        _own = address.Authority;
    }

    /// <summary>What the browser keeps for this visit.</summary>
    public IBrowserContext Context { get; }

    /// <summary>The first tab.</summary>
    public IPage Page { get; private set; } = null!;

    /// <summary>What was seen that should not be.</summary>
    public IReadOnlyCollection<string> Complaints => _complaints;

    /// <summary>Every address that was asked for.</summary>
    public IReadOnlyCollection<string> Requests => _requests;

    /// <summary>Opens a window with one empty tab, in a browser that the program has let in.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="program">The program.</param>
    /// <param name="options">Size, colours and the like; the address is added.</param>
    public static async Task<Visit> OpenAsync(IBrowser browser, RunningProgram program, BrowserNewContextOptions? options = null)
    {
        var visit = await OpenAsStrangerAsync(browser, program, options);
        var answer = await visit.Context.APIRequest.GetAsync(program.Entrance.ToString());
        Assert.True(answer.Ok, $"The program did not let the browser in: {answer.Status}");
        return visit;
    }

    /// <summary>Opens a window with one empty tab, in a browser that has never seen the program.</summary>
    /// <param name="browser">The browser.</param>
    /// <param name="program">The program.</param>
    /// <param name="options">Size, colours and the like; the address is added.</param>
    public static async Task<Visit> OpenAsStrangerAsync(IBrowser browser, RunningProgram program, BrowserNewContextOptions? options = null)
    {
        options ??= new BrowserNewContextOptions();
        options.BaseURL = program.Address.ToString();
        options.AcceptDownloads = true;
        var context = await browser.NewContextAsync(options);
        context.SetDefaultTimeout(Patience.PageMilliseconds);
        var visit = new Visit(context, program.Address);
        context.Request += (_, request) => visit.Ask(request.Url);
        context.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" or "assert")
                visit._complaints.Enqueue($"console {message.Type}: {message.Text} ({message.Location})");
        };
        context.WebError += (_, error) => visit._complaints.Enqueue($"page error: {error.Error}");
        context.Dialog += (_, dialog) =>
        {
            visit._complaints.Enqueue($"dialog: {dialog.Message}");
            _ = dialog.DismissAsync();
        };
        context.Page += (_, page) => page.WebSocket += (_, socket) => visit.Ask(socket.Url);
        visit.Page = await context.NewPageAsync();
        return visit;
    }

    /// <summary>Fails when anything was seen that should not be.</summary>
    public void AssertQuiet() => Assert.True(_complaints.IsEmpty, string.Join(Environment.NewLine, _complaints.Distinct()));

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await Context.CloseAsync();

    private void Ask(string url)
    {
        _requests.Enqueue(url);
        var uri = new Uri(url);
        if (uri.Scheme is not ("data" or "blob" or "about") && uri.Authority != _own)
            _complaints.Enqueue($"request to elsewhere: {url}");
    }
}
