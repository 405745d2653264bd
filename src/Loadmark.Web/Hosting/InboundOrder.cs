using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Loadmark.Web.Hosting;

/// <summary>
/// What a browser says over its connection is taken in the order in which it was said. The framework keeps that order for events, which
/// wait for their turn while the page is drawn, and not for the word that a drawing has arrived, which it takes at once; it then forgets
/// the handlers that the drawing replaced, and an event that was sent before and still waits finds nobody: a click is lost.
/// </summary>
internal sealed class InboundOrder : CircuitHandler
{
    private SynchronizationContext? _turns;

    /// <inheritdoc/>
    public override Task OnCircuitOpenedAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        // Called in a turn of the page's own queue.
        _turns = SynchronizationContext.Current;
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public override Func<CircuitInboundActivityContext, Task> CreateInboundActivityHandler(
        Func<CircuitInboundActivityContext, Task> next) =>
        context => _turns is { } turns ? TakeTurnAsync(turns, () => next(context)) : next(context);

    private static async Task TakeTurnAsync(SynchronizationContext turns, Func<Task> activity)
    {
        var begun = new TaskCompletionSource<Task>(TaskCreationOptions.RunContinuationsAsynchronously);
        turns.Post(_ => begun.SetResult(BeginAsync(activity)), null);
        await await begun.Task;
    }

    // A fault, too, is the activity's, and not the queue's.
    private static async Task BeginAsync(Func<Task> activity) => await activity();
}
