using Loadmark.Core.Display;
using Loadmark.Web.Metering;
using Loadmark.Web.Texts;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>
/// A meter that speaks: connects it, and hands on what it reads. Its buttons do not take the focus, so that a reading can go into the field
/// that had it.
/// </summary>
public sealed partial class MeterBar : ComponentBase
{
    private string _address = "";
    private bool _warnsOfAmps;

    /// <summary>Is told each value that was read.</summary>
    [Parameter, EditorRequired] public EventCallback<MeterReading> OnReading { get; set; }

    [Inject] private BenchMeter Meter { get; set; } = null!;
    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose() => Meter.Changed -= Redraw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Meter.Changed += Redraw;

    private void Redraw(object? sender, EventArgs change) => _ = InvokeAsync(StateHasChanged);

    private Task ConnectAsync()
    {
        _warnsOfAmps = false;
        return Meter.ConnectAsync(_address);
    }

    private Task DisconnectAsync()
    {
        _warnsOfAmps = false;
        return Meter.DisconnectAsync();
    }

    private async Task ReadVoltsAsync() => await HandOnAsync(await Meter.ReadVoltsAsync());

    private async Task ReadAmpsAsync()
    {
        _warnsOfAmps = !Meter.MayReadAmps;
        if (!_warnsOfAmps)
            await HandOnAsync(await Meter.ReadAmpsAsync());
    }

    private Task AllowAmpsAsync()
    {
        Meter.AllowAmps();
        return ReadAmpsAsync();
    }

    private void NoAmps() => _warnsOfAmps = false;

    private static string Shown(MeterReading reading) => reading.Quantity == MeterQuantity.Amps
        ? FigureDisplay.Computed(new Amps(reading.Value))
        : FigureDisplay.Computed(new Volts(reading.Value));

    private Task HandOnAsync(MeterReading? reading) => reading is null ? Task.CompletedTask : OnReading.InvokeAsync(reading);
}
