using Loadmark.Web.Parts;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Microsoft.JSInterop;

namespace Loadmark.Web.Layout;

/// <summary>What every page has around its content: the bar at the top, the theme, and the dialogs.</summary>
public sealed partial class PageLayout : LayoutComponentBase
{
    private string _choice = "auto";
    private bool _isDark;
    private PageScript<PageLayout>? _script;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private IJSRuntime Browser { get; set; } = null!;
    [Inject] private NavigationManager Address { get; set; } = null!;

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        _script = new PageScript<PageLayout>(Browser, this);
        _choice = await _script.AskForAsync<string>("watchTheme") ?? _choice;
    }

    /// <summary>Told by the browser when light turns dark, or dark light.</summary>
    [JSInvokable]
    public void ShowDark(bool isDark)
    {
        _isDark = isDark;
        StateHasChanged();
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _script?.DisposeAsync() ?? ValueTask.CompletedTask;

    private async Task ChooseAsync(ChangeEventArgs change)
    {
        _choice = change.Value as string ?? "auto";
        if (_script is not null)
            await _script.AskAsync<object>("chooseTheme", _choice);
    }
}
