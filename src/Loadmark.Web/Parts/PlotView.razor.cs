using Loadmark.Drawing.Scenes;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Loadmark.Web.Parts;

/// <summary>A plot at the width there is; where it is asked for, it tells where along it the pointer is.</summary>
public sealed partial class PlotView : ComponentBase
{
    private ElementReference _box;
    private int _width;
    private Scene? _scene;
    private PageScript<PlotView>? _script;

    /// <summary>Draws the plot at a width, in CSS pixels.</summary>
    [Parameter, EditorRequired] public Func<int, Scene> Draw { get; set; } = null!;

    /// <summary>Told where the pointer is: 0 at the left end of the lines, 1 at the right end.</summary>
    [Parameter] public EventCallback<double> OnPoint { get; set; }

    /// <summary>Told when the wheel is turned with Shift or Ctrl: where, as above, and by what the range is to be multiplied.</summary>
    [Parameter] public EventCallback<(double At, double Factor)> OnZoom { get; set; }

    [Inject] private IJSRuntime Browser { get; set; } = null!;

    /// <summary>Told by the browser how wide there is room.</summary>
    /// <param name="width">In CSS pixels.</param>
    [JSInvokable]
    public Task SetWidthAsync(int width) => InvokeAsync(() =>
    {
        _width = width;
        StateHasChanged();
    });

    /// <summary>Told by the browser where the pointer is.</summary>
    /// <param name="share">0 to 1 of the picture's width.</param>
    [JSInvokable]
    public Task PointAsync(double share) => InvokeAsync(() => Along(share) is { } at ? OnPoint.InvokeAsync(at) : Task.CompletedTask);

    /// <summary>Told by the browser that the wheel was turned.</summary>
    /// <param name="share">0 to 1 of the picture's width.</param>
    /// <param name="factor">What the range is to be multiplied by.</param>
    [JSInvokable]
    public Task ZoomAsync(double share, double factor) =>
        InvokeAsync(() => Along(share) is { } at ? OnZoom.InvokeAsync((at, factor)) : Task.CompletedTask);

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _script?.DisposeAsync() ?? ValueTask.CompletedTask;

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
            return;
        _script = new PageScript<PlotView>(Browser, this);
        await _script.WatchAsync("watchWidth", _box);
        if (OnPoint.HasDelegate)
            await _script.WatchAsync("watchPlot", _box);
    }

    /// <summary>Where along the lines a place in the picture is; null beside them.</summary>
    private double? Along(double share)
    {
        if (_scene?.Groups.FirstOrDefault(static group => group.Kind == SubjectKind.Series) is not { Bounds: { Width: > 0 } frame })
            return null;
        var at = ((share * _scene.Width) - frame.X) / frame.Width;
        return at is >= -0.02 and <= 1.02 ? Math.Clamp(at, 0, 1) : null;
    }
}
