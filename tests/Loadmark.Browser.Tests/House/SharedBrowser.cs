namespace Loadmark.Browser.Tests.House;

/// <summary>
/// Debian's Chromium, started once for all tests: the shell of it that has no window, which lays out, draws and runs scripts with the same
/// code and less processor time. Nothing is downloaded.
/// </summary>
public sealed class SharedBrowser : IAsyncLifetime
{
    private const string Shell = "/usr/bin/chromium-headless-shell";

    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>The browser.</summary>
    public IBrowser Browser => _browser ?? throw new InvalidOperationException("The browser has not been started.");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        SetDefaultExpectTimeout(Patience.PageMilliseconds);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Shell,

            // Root has no sandbox; the rest keeps the browser itself from asking for things on the network.
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
            Timeout = (float)Patience.Program.TotalMilliseconds,
        });
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
            await _browser.CloseAsync();
        _playwright?.Dispose();
    }
}
