using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Microsoft.JSInterop;
using MudBlazor;

namespace Loadmark.Web.Parts;

/// <summary>The keys that work on a rig's page, and whether those without Ctrl do.</summary>
public sealed partial class KeysDialog : ComponentBase, IAsyncDisposable
{
    private PageScript<KeysDialog>? _script;
    private bool _single = true;

    [CascadingParameter] private IMudDialogInstance? Dialog { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private IJSRuntime Browser { get; set; } = null!;

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _script?.DisposeAsync() ?? ValueTask.CompletedTask;

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        _script = new PageScript<KeysDialog>(Browser, this);
        _single = await _script.AskAsync<bool?>("singleKeys") ?? true;
        StateHasChanged();
    }

    private async Task ChooseAsync(ChangeEventArgs change)
    {
        _single = change.Value is true;
        if (_script is not null)
            await _script.AskAsync<object>("chooseSingleKeys", _single);
    }
}
