using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Loadmark.Bench;

/// <summary>A browser that is asked for much and does nothing.</summary>
internal sealed class HeadlessBrowser : IJSRuntime, IJSObjectReference
{
    public ValueTask<T> InvokeAsync<T>(string identifier, object?[]? args) =>
        ValueTask.FromResult(typeof(T) == typeof(IJSObjectReference) ? (T)(object)this : default!);

    public ValueTask<T> InvokeAsync<T>(string identifier, CancellationToken cancellationToken, object?[]? args) => InvokeAsync<T>(identifier, args);

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    /// <summary>Where it is, for one page.</summary>
    internal sealed class Address : NavigationManager
    {
        public Address() => Initialize("http://localhost/", "http://localhost/");

        protected override void NavigateToCore(string uri, NavigationOptions options) => Uri = ToAbsoluteUri(uri).ToString();
    }
}
