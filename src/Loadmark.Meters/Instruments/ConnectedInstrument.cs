using Loadmark.Meters.Scpi;

namespace Loadmark.Meters.Instruments;

/// <summary>An instrument that has said what it is.</summary>
/// <param name="address">Where it is.</param>
/// <param name="instrument">The instrument; it is closed with this.</param>
/// <param name="identification">What it says it is.</param>
public sealed class ConnectedInstrument(InstrumentAddress address, Instrument instrument, Identification identification) : IAsyncDisposable
{
    /// <summary>The longest that closing is waited for: a serial port may take its time, which nobody needs to see.</summary>
    private static readonly TimeSpan Closing = TimeSpan.FromMilliseconds(300);

    /// <summary>Where it is.</summary>
    public InstrumentAddress Address => address;

    /// <summary>What it says it is.</summary>
    public Identification Identification => identification;

    /// <summary>Whether it can still be asked; an instrument out of step has to be connected again.</summary>
    public bool CanBeAsked => !instrument.IsOutOfStep;

    /// <summary>Measures a d.c. voltage in volts, or a direct current in amperes.</summary>
    /// <param name="amps">Whether the current, for which the instrument switches to its current range.</param>
    /// <param name="cancellation">Stops waiting; the instrument cannot be asked again after it.</param>
    /// <exception cref="InstrumentException">It does not answer in time or not as it should, or reports an error.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<InstrumentReading> ReadAsync(bool amps, CancellationToken cancellation = default) =>
        amps ? instrument.ReadAmpsAsync(cancellation) : instrument.ReadVoltsAsync(cancellation);

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => CloseAsync(instrument);

    /// <summary>Closes an instrument, and goes on where that takes long.</summary>
    internal static async ValueTask CloseAsync(Instrument instrument)
    {
        try
        {
            await Task.Run(async () => await instrument.DisposeAsync().ConfigureAwait(false)).WaitAsync(Closing).ConfigureAwait(false);
        }
        catch (Exception fault) when (fault is TimeoutException or IOException or UnauthorizedAccessException)
        {
            // It closes by itself, or is gone: an adaptor that was pulled out has nothing left to close.
        }
    }
}
