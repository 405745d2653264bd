using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Diagrams;
using Loadmark.Drawing.Scenes;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;
using Microsoft.JSInterop;

namespace Loadmark.Web.Parts;

/// <summary>The rig's diagram at the width there is, with what is lit and picked.</summary>
public sealed partial class RigDrawing : ComponentBase
{
    private ElementReference _paper;
    private int _width;
    private Scene? _scene;
    private (Rig? Rig, CheckResult? Check, DiagramValues? Readings, int Width) _drawn;
    private IReadOnlyDictionary<string, string> _warned = new Dictionary<string, string>();
    private PageScript<RigDrawing>? _script;
    private IReadOnlyList<string> _inSight = [];

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    /// <summary>Told when a part of the diagram is clicked.</summary>
    [Parameter] public EventCallback<SceneGroup> OnPick { get; set; }

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;
    [Inject] private IJSRuntime Browser { get; set; } = null!;

    /// <summary>Told by the browser how wide the paper is.</summary>
    /// <param name="width">In CSS pixels.</param>
    [JSInvokable]
    public Task SetWidthAsync(int width) => InvokeAsync(() =>
    {
        _width = width;
        Draw();
        StateHasChanged();
    });

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _script?.DisposeAsync() ?? ValueTask.CompletedTask;

    /// <inheritdoc/>
    protected override void OnInitialized() => _inSight = View.InSight;

    /// <inheritdoc/>
    protected override void OnParametersSet() => Draw();

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _script = new PageScript<RigDrawing>(Browser, this);
            await _script.WatchAsync("watchWidth", _paper);
        }
        else if (_script is not null && !ReferenceEquals(_inSight, View.InSight))
        {
            _inSight = View.InSight;
            await _script.AskAsync<object>("bringIntoSight", _paper, _inSight);
        }
    }

    private void Draw()
    {
        _warned = View.Connections.Where(static connection => connection.Objection is not null)
            .ToDictionary(static connection => connection.Load, static connection => connection.Objection!.Message, StringComparer.Ordinal);
        var (rig, check) = View.Preview is { } preview ? (preview.Rig, preview.Check) : (View.Rig, View.Check);
        var wanted = (rig, check, View.Readings, _width);
        if (_width == 0 || wanted == _drawn)
            return;
        _drawn = wanted;
        _scene = RigDiagram.Draw(rig, check, new DiagramOptions { Width = _width, Readings = View.Readings });
    }
}
