using System.Collections.Immutable;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>The rig's file as text: what is kept, mailed and exported.</summary>
public sealed partial class FilePanel : ComponentBase
{
    private string _text = "";
    private string _shown = "";
    private ImmutableArray<Loadmark.Files.Errors.FileError> _faults = [];

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_shown == View.Session.Text)
            return;
        _text = _shown = View.Session.Text;
        _faults = View.Session.Errors;
    }

    private async Task KeepAsync() => _faults = await View.Session.EditTextAsync(T["editing the file"].Value, _text);
}
