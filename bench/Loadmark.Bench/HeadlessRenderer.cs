using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.RenderTree;
using Microsoft.Extensions.Logging;

namespace Loadmark.Bench;

#pragma warning disable BL0006 // What a page draws is looked at here as a browser would; nothing of the program does.

/// <summary>
/// Draws a page's components as a circuit does, and sends them events as a browser does; what is drawn goes nowhere. What is missing of a
/// circuit: packing what changed for the browser, and the socket.
/// </summary>
internal sealed class HeadlessRenderer(IServiceProvider services, ILoggerFactory log) : Renderer(services, log)
{
    private int _root;

    /// <summary>What went wrong in a component.</summary>
    public List<Exception> Faults { get; } = [];

    /// <summary>How often something was drawn.</summary>
    public int Batches { get; private set; }

    public override Dispatcher Dispatcher { get; } = Dispatcher.CreateDefault();

    /// <summary>Draws a component, and waits until it has settled.</summary>
    public Task ShowAsync<T>(ParameterView parameters)
        where T : IComponent =>
        Dispatcher.InvokeAsync(() =>
        {
            _root = AssignRootComponentId(InstantiateComponent(typeof(T)));
            return RenderRootComponentAsync(_root, parameters);
        });

    /// <summary>Changes a field, and waits until all that follows is done and drawn.</summary>
    /// <param name="label">The field's aria-label.</param>
    /// <param name="value">What is typed.</param>
    public Task ChangeAsync(string label, string value) =>
        Dispatcher.InvokeAsync(() => DispatchEventAsync(
            Handler(_root, label) ?? throw new InvalidOperationException($"There is no field {label}."), null, new ChangeEventArgs { Value = value }));

    /// <summary>Closes the page.</summary>
    public Task CloseAsync() => Dispatcher.InvokeAsync(Dispose);

    protected override void HandleException(Exception exception) => Faults.Add(exception);

    protected override Task UpdateDisplayAsync(in RenderBatch renderBatch)
    {
        Batches++;
        return Task.CompletedTask;
    }

    private ulong? Handler(int component, string label)
    {
        var frames = GetCurrentRenderTreeFrames(component);
        var (isField, change) = (false, (ulong?)null);
        for (var at = 0; at < frames.Count; at++)
        {
            ref var frame = ref frames.Array[at];
            switch (frame.FrameType)
            {
                case RenderTreeFrameType.Component:
                    if (Handler(frame.ComponentId, label) is { } within)
                        return within;
                    break;
                case RenderTreeFrameType.Element:
                    (isField, change) = (false, null);
                    break;
                case RenderTreeFrameType.Attribute:
                    isField |= frame.AttributeName == "aria-label" && Equals(frame.AttributeValue, label);
                    change = frame.AttributeName == "onchange" ? frame.AttributeEventHandlerId : change;
                    if (isField && change is not null)
                        return change;
                    break;
            }
        }

        return null;
    }
}
