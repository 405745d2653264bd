using Loadmark.Web.Hosting;
using Microsoft.AspNetCore.Components;

namespace Loadmark.Web.Tests.Hosting;

/// <summary>What a browser says is taken in the order in which it was said, however long the page is busy with drawing.</summary>
public sealed class InboundOrderTests
{
    private readonly Dispatcher _page = Dispatcher.CreateDefault();
    private readonly InboundOrder _order = new();

    /// <summary>An event waits for its turn by itself; the word that a drawing has arrived does not, and must not overtake it.</summary>
    [Fact]
    public async Task The_word_of_a_drawing_does_not_overtake_an_event_that_was_sent_before_it()
    {
        await _page.InvokeAsync(() => _order.OnCircuitOpenedAsync(null!, TestContext.Current.CancellationToken));
        var taken = new List<string>();
        using var drawn = new ManualResetEventSlim();
        using var drawing = new ManualResetEventSlim();
        var busy = Task.Run(
            () => _page.InvokeAsync(() =>
            {
                drawing.Set();
                drawn.Wait();
            }),
            TestContext.Current.CancellationToken);
        drawing.Wait(TestContext.Current.CancellationToken);

        var click = _order.CreateInboundActivityHandler(_ => _page.InvokeAsync(() => taken.Add("click")))(null!);
        var arrived = _order.CreateInboundActivityHandler(_ =>
        {
            taken.Add("arrived");
            return Task.CompletedTask;
        })(null!);
        drawn.Set();
        await Task.WhenAll(busy, click, arrived);

        Assert.Equal(["click", "arrived"], taken);
    }

    [Fact]
    public async Task A_fault_is_told_to_whoever_asked()
    {
        await _page.InvokeAsync(() => _order.OnCircuitOpenedAsync(null!, TestContext.Current.CancellationToken));
        var activity = _order.CreateInboundActivityHandler(static _ => throw new InvalidOperationException("at once"));

        Assert.Equal("at once", (await Assert.ThrowsAsync<InvalidOperationException>(() => activity(null!))).Message);
    }
}
