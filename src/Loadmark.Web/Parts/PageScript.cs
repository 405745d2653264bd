using Microsoft.JSInterop;

namespace Loadmark.Web.Parts;

/// <summary>
/// The page's script in the browser, for one component: what it is told, and what it watches for the component until that goes. A browser
/// that has gone is told nothing and watches nothing, and that is no fault; nor is it one where the component goes while its script is
/// still on the way.
/// </summary>
/// <typeparam name="T">The component; its invokable methods are told what is watched.</typeparam>
/// <param name="browser">The browser.</param>
/// <param name="component">The component.</param>
internal sealed class PageScript<T>(IJSRuntime browser, T component) : IAsyncDisposable
    where T : class
{
    private readonly DotNetObjectReference<T> _self = DotNetObjectReference.Create(component);
    private readonly List<IJSObjectReference> _watches = [];
    private IJSObjectReference? _module;
    private bool _isGone;

    /// <summary>Calls a function of the script.</summary>
    /// <typeparam name="TAnswer">What it answers.</typeparam>
    /// <param name="function">Its name.</param>
    /// <param name="arguments">What it is given.</param>
    /// <returns>Its answer; nothing where the browser or the component has gone.</returns>
    public async Task<TAnswer?> AskAsync<TAnswer>(string function, params object?[] arguments)
    {
        try
        {
            _module ??= await browser.InvokeAsync<IJSObjectReference>("import", "./_content/Loadmark.Web/loadmark.js");
            if (!_isGone)
                return await _module.InvokeAsync<TAnswer>(function, arguments);
            await _module.DisposeAsync();
            return default;
        }
        catch (Exception gone) when (gone is JSDisconnectedException || (_isGone && gone is OperationCanceledException))
        {
            return default;
        }
    }

    /// <summary>Calls a function of the script that is also given the component, to tell it what it asks for.</summary>
    /// <typeparam name="TAnswer">What it answers.</typeparam>
    /// <param name="function">Its name.</param>
    /// <param name="arguments">What it is given before the component.</param>
    public Task<TAnswer?> AskForAsync<TAnswer>(string function, params object?[] arguments) =>
        AskAsync<TAnswer>(function, [.. arguments, _self]);

    /// <summary>Begins to watch something for the component.</summary>
    /// <param name="function">The function of the script that watches it.</param>
    /// <param name="arguments">What it is given before the component.</param>
    public async Task WatchAsync(string function, params object?[] arguments)
    {
        if (await AskForAsync<IJSObjectReference>(function, arguments) is not { } watch)
            return;
        if (_isGone)
            await StopAsync([watch]);
        else
            _watches.Add(watch);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _isGone = true;
        _self.Dispose();
        await StopAsync(_watches);
    }

    private async Task StopAsync(IEnumerable<IJSObjectReference> watches)
    {
        try
        {
            foreach (var watch in watches)
                await watch.InvokeVoidAsync("stop");
            if (_module is not null)
                await _module.DisposeAsync();
        }
        catch (Exception gone) when (gone is JSDisconnectedException or OperationCanceledException)
        {
            // The browser has gone, before or in the middle of it, and all this with it.
        }
    }
}
