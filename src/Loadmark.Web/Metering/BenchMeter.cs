using Loadmark.Meters.Instruments;
using Loadmark.Meters.Scpi;

namespace Loadmark.Web.Metering;

/// <summary>
/// The meter at the bench, for one window of the page: at most one is connected, and is closed with the window. It is the machine that the
/// program runs on that connects, not the one of the browser. All members are for the window's own thread.
/// </summary>
/// <param name="clock">By which clock the time is told.</param>
public sealed class BenchMeter(TimeProvider clock) : IAsyncDisposable, IDisposable
{
    private readonly CancellationTokenSource _leaving = new();
    private ConnectedInstrument? _meter;
    private bool _isGone;

    /// <summary>After anything of it has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>What the meter says it is; null where none is connected.</summary>
    public Identification? Identification => _meter?.Identification;

    /// <summary>Where the meter is; null where none is connected.</summary>
    public InstrumentAddress? Address => _meter?.Address;

    /// <summary>Whether it is connecting or reading; what is asked for meanwhile is not done.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>What went wrong the last time, in a sentence or two; null where nothing did.</summary>
    public string? Fault { get; private set; }

    /// <summary>Whether somebody said of this connection that the meter is set up for amps.</summary>
    public bool MayReadAmps { get; private set; }

    /// <summary>The last value of this connection; null before the first.</summary>
    public MeterReading? Last { get; private set; }

    /// <summary>Connects to a meter in place of the one before, and asks it what it is.</summary>
    /// <param name="address">Where it is, as typed; see <see cref="InstrumentAddress.Read"/>.</param>
    public Task ConnectAsync(string address) => BusyAsync(async () =>
    {
        await CloseAsync();
        if (InstrumentAddress.Read(address, out var complaint) is not { } place)
        {
            Fault = complaint;
            return;
        }

        var met = await InstrumentPort.MeetAsync(place, cancellation: _leaving.Token);
        if (_isGone)
            await met.DisposeAsync();
        else
            _meter = met;
    });

    /// <summary>Lets go of the meter.</summary>
    public Task DisconnectAsync() => BusyAsync(CloseAsync);

    /// <summary>Somebody says that the meter is set up for amps: its other sockets, in series with one load.</summary>
    public void AllowAmps()
    {
        MayReadAmps = _meter is not null;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Reads a voltage.</summary>
    /// <returns>Null where there is no value; <see cref="Fault"/> says why.</returns>
    public Task<MeterReading?> ReadVoltsAsync() => ReadAsync(MeterQuantity.Volts);

    /// <summary>Reads a current, for which the meter goes to its current range.</summary>
    /// <returns>Null where there is no value; <see cref="Fault"/> says why.</returns>
    /// <exception cref="InvalidOperationException">Nobody has <see cref="AllowAmps">allowed</see> it for this connection.</exception>
    public Task<MeterReading?> ReadAmpsAsync() => MayReadAmps || _meter is null
        ? ReadAsync(MeterQuantity.Amps)
        : throw new InvalidOperationException("Amps are read once somebody says that the meter is set up for them.");

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_isGone)
            return;
        _isGone = true;
        await _leaving.CancelAsync();
        _leaving.Dispose();
        await CloseAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => _ = DisposeAsync().AsTask();

    private async Task<MeterReading?> ReadAsync(MeterQuantity quantity)
    {
        MeterReading? taken = null;
        await BusyAsync(async () =>
        {
            if (_meter is not { } meter)
            {
                Fault = "No meter is connected.";
                return;
            }

            var reading = await meter.ReadAsync(quantity == MeterQuantity.Amps, _leaving.Token);
            var who = meter.Identification;
            if (reading.Figure is { } value)
                Last = taken = new MeterReading(quantity, value, reading.Text, NameOf(who), clock.GetUtcNow());
            else
                Fault = reading.State == ReadingState.NotANumber
                    ? "The meter says that it has no number for this."
                    : "It is beyond the range of the meter.";
        });
        return taken;
    }

    private static string NameOf(Identification who) =>
        who.Serial is { } serial ? $"{who.Maker} {who.Model}, serial number {serial}" : $"{who.Maker} {who.Model}";

    private async Task BusyAsync(Func<Task> act)
    {
        if (IsBusy || _isGone)
            return;
        (IsBusy, Fault) = (true, null);
        Changed?.Invoke(this, EventArgs.Empty);
        try
        {
            await act();
        }
        catch (InstrumentException fault)
        {
            Fault = fault.Message;
            if (_meter is { CanBeAsked: false })
            {
                Fault = $"{fault.Message} Connect it again.";
                await CloseAsync();
            }
        }
        catch (OperationCanceledException) when (_isGone)
        {
            // The window is closed; nobody looks at it any more.
        }
        finally
        {
            IsBusy = false;
            Changed?.Invoke(this, EventArgs.Empty);
        }
    }

    private async Task CloseAsync()
    {
        var meter = _meter;
        (_meter, MayReadAmps, Last) = (null, false, null);
        if (meter is not null)
            await meter.DisposeAsync();
    }
}
