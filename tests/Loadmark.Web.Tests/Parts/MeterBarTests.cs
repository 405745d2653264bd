using System.Net;
using System.Net.Sockets;
using Bunit;
using Loadmark.Meters.Simulated;
using Loadmark.Web.Metering;
using Loadmark.Web.Parts;
using Microsoft.Extensions.DependencyInjection;

namespace Loadmark.Web.Tests.Parts;

/// <summary>The meter at the bench, over a real connection to a simulated one.</summary>
public sealed class MeterBarTests : PageTest
{
    private readonly List<MeterReading> _readings = [];

    private BenchMeter Meter => Services.GetRequiredService<BenchMeter>();

    [Fact]
    public async Task A_meter_is_connected_read_and_let_go()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([9.02], [0.2101]));
        var bar = Render<MeterBar>(part => part.Add(one => one.OnReading, _readings.Add));
        Assert.Empty(Buttons(bar, "Read"));
        await ConnectAsync(bar, $"127.0.0.1:{simulated.Port}");
        Assert.Contains($"Loadmark Simulated meter at 127.0.0.1:{simulated.Port}", bar.Markup, StringComparison.Ordinal);
        await PressAsync(bar, "Read volts");
        var reading = Assert.Single(_readings);
        Assert.Equal(
            (MeterQuantity.Volts, 9.02m, "+9.02000000E+00", "Loadmark Simulated meter"), (reading.Quantity, reading.Value, reading.Text, reading.Instrument));
        Assert.Contains("9.02 V", bar.Find("[role=status]").TextContent, StringComparison.Ordinal);
        await PressAsync(bar, "Disconnect");
        Assert.Null(Meter.Identification);
        Assert.NotNull(bar.Find("#meter-address"));
    }

    /// <summary>A mouse that presses a reading's button leaves the focus where it is.</summary>
    [Fact]
    public async Task Buttons_that_read_leave_the_focus_where_it_is()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([9.02], [0.2101]));
        var bar = Render<MeterBar>(part => part.Add(one => one.OnReading, _readings.Add));
        await ConnectAsync(bar, $"127.0.0.1:{simulated.Port}");
        await PressAsync(bar, "Read amps");
        foreach (var name in (string[])["Read volts", "Read amps", "It is set up for amps", "Do not read amps"])
            Assert.True(Button(bar, name).HasAttribute("blazor:onmousedown:preventdefault"), name);
    }

    [Fact]
    public async Task Amps_are_read_after_a_warning_that_is_confirmed_once_a_connection()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([9.02], [0.2101]));
        var bar = Render<MeterBar>(part => part.Add(one => one.OnReading, _readings.Add));
        var address = $"127.0.0.1:{simulated.Port}";
        await ConnectAsync(bar, address);
        await Assert.ThrowsAsync<InvalidOperationException>(() => Meter.ReadAmpsAsync());
        await PressAsync(bar, "Read amps");
        Assert.Contains("never across a supply", bar.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        await PressAsync(bar, "Do not read amps");
        Assert.Empty(bar.FindAll("[role=alert]"));
        Assert.Empty(_readings);

        await PressAsync(bar, "Read amps");
        await PressAsync(bar, "It is set up for amps");
        await PressAsync(bar, "Read amps");
        Assert.Empty(bar.FindAll("[role=alert]"));
        Assert.Equal([(MeterQuantity.Amps, 0.2101m), (MeterQuantity.Amps, 0.2101m)], _readings.Select(static one => (one.Quantity, one.Value)));

        await PressAsync(bar, "Disconnect");
        await ConnectAsync(bar, address);
        await PressAsync(bar, "Read amps");
        Assert.NotNull(bar.Find("[role=alert]"));
        Assert.Equal(2, _readings.Count);
    }

    [Fact]
    public async Task What_is_no_value_and_who_is_not_there_are_told()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([double.PositiveInfinity, double.NaN, 1e30], [0.2101]));
        var bar = Render<MeterBar>(part => part.Add(one => one.OnReading, _readings.Add));
        await ConnectAsync(bar, "no such/host");
        Assert.Contains("Expected a host", bar.Find(".wrong").TextContent, StringComparison.Ordinal);
        await ConnectAsync(bar, $"127.0.0.1:{FreePort()}");
        Assert.StartsWith("No instrument takes a connection at 127.0.0.1", bar.Find(".wrong").TextContent, StringComparison.Ordinal);
        await ConnectAsync(bar, $"127.0.0.1:{simulated.Port}");
        Assert.Empty(bar.FindAll(".wrong"));
        await PressAsync(bar, "Read volts");
        Assert.Equal("It is beyond the range of the meter.", bar.Find(".wrong").TextContent);
        await PressAsync(bar, "Read volts");
        Assert.Equal("The meter says that it has no number for this.", bar.Find(".wrong").TextContent);
        await PressAsync(bar, "Read volts");
        Assert.Equal("It is beyond the range of the meter.", bar.Find(".wrong").TextContent);
        Assert.Empty(_readings);
    }

    [Fact]
    public async Task A_meter_that_is_gone_is_told_and_has_to_be_connected_again()
    {
        var simulated = new SimulatedInstrument(new SimulatedMeter([9.02], [0.2101]));
        var bar = Render<MeterBar>(part => part.Add(one => one.OnReading, _readings.Add));
        await ConnectAsync(bar, $"127.0.0.1:{simulated.Port}");
        await simulated.DisposeAsync();
        await PressAsync(bar, "Read volts");
        Assert.EndsWith("Connect it again.", bar.Find(".wrong").TextContent, StringComparison.Ordinal);
        Assert.NotNull(bar.Find("#meter-address"));
        Assert.Null(Meter.Identification);
    }

    /// <summary>Whoever closes the window has let go of the meter: it can be connected to by another.</summary>
    [Fact]
    public async Task The_connection_ends_with_the_window()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        var meter = new BenchMeter(TimeProvider.System);
        var connecting = meter.ConnectAsync($"127.0.0.1:{((IPEndPoint)listener.LocalEndpoint).Port}");
        using var client = await listener.AcceptTcpClientAsync(Stop);
        using var reader = new StreamReader(client.GetStream());
        Assert.Equal("*IDN?", await reader.ReadLineAsync(Stop));
        Assert.True(meter.IsBusy);
        await meter.ConnectAsync("not now");
        Assert.Null(meter.Fault);
        await meter.DisposeAsync();
        await connecting.WaitAsync(TimeSpan.FromSeconds(2), Stop);
        Assert.Null(meter.Identification);
        Assert.Null(await reader.ReadLineAsync(Stop).AsTask().WaitAsync(TimeSpan.FromSeconds(20), Stop));
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task ConnectAsync(IRenderedComponent<MeterBar> bar, string address)
    {
        await bar.Find("#meter-address").InputAsync(new() { Value = address });
        await bar.Find("form").SubmitAsync(EventArgs.Empty);
    }

    private static Task PressAsync(IRenderedComponent<MeterBar> bar, string name) => bar.InvokeAsync(() => Button(bar, name).ClickAsync(new()));

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<MeterBar> bar, string name) => Assert.Single(Buttons(bar, name));

    private static List<AngleSharp.Dom.IElement> Buttons(IRenderedComponent<MeterBar> bar, string name) =>
        [.. bar.FindAll("button").Where(button => button.TextContent.StartsWith(name, StringComparison.Ordinal))];
}
