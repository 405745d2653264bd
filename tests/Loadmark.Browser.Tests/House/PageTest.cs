namespace Loadmark.Browser.Tests.House;

/// <summary>
/// What all tests in the browser share: the browser, a program, and that every visit ends without a complaint, whatever it was about. The
/// program is the one of all classes, or one of its own where a class says <see cref="IClassFixture{TFixture}"/> of
/// <see cref="ServedPage"/>: where its tests would meet what others leave behind, or leave behind what others must not meet.
/// </summary>
/// <param name="browser">The browser.</param>
/// <param name="served">The program.</param>
public abstract class PageTest(SharedBrowser browser, ServedPage served) : IAsyncLifetime
{
    private readonly List<Visit> _visits = [];
    private int _known;

    /// <summary>The program.</summary>
    protected ServedPage Served => served;

    /// <inheritdoc/>
    public ValueTask InitializeAsync()
    {
        _known = served.Program.Errors.Count;
        return ValueTask.CompletedTask;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        foreach (var visit in _visits)
            await visit.DisposeAsync();
        foreach (var visit in _visits)
            visit.AssertQuiet();
        served.Program.AssertWell(_known);
    }

    /// <summary>Opens a window of 1280 by 900, or as asked.</summary>
    private protected async Task<Visit> VisitAsync(BrowserNewContextOptions? options = null)
    {
        options ??= new BrowserNewContextOptions();
        options.ViewportSize ??= new ViewportSize { Width = 1280, Height = 900 };
        var visit = await Visit.OpenAsync(browser.Browser, served.Program, options);
        _visits.Add(visit);
        return visit;
    }
}
