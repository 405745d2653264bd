using Loadmark.Meters.Scpi;

namespace Loadmark.Meters.Instruments;

/// <summary>
/// An instrument that speaks SCPI (IEEE 488.2 and SCPI-99, both from memory): it is asked for one thing after the other, and after each
/// whether it found a fault in the question.
/// </summary>
public sealed class Instrument : IAsyncDisposable
{
    private const int MostErrors = 30;

    private readonly LineStream _lines;
    private readonly InstrumentOptions _options;
    private readonly SemaphoreSlim _turn = new(1);
    private string? _broken;

    /// <summary>Talks over a stream: of a socket, of a serial port, or any other.</summary>
    /// <param name="stream">The stream; it is closed with the instrument.</param>
    /// <param name="options">How; null for as usual.</param>
    public Instrument(Stream stream, InstrumentOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(stream);
        _options = options ?? new InstrumentOptions();
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(_options.Timeout, TimeSpan.Zero, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(_options.LongestLine, nameof(options));
        _lines = new LineStream(stream, _options.LongestLine);
    }

    /// <summary>Whether it can be asked no more, because answers and questions may be out of step.</summary>
    public bool IsOutOfStep => _broken is not null;

    /// <summary>What it says it is.</summary>
    /// <inheritdoc cref="AskAsync"/>
    public async Task<Identification> IdentifyAsync(CancellationToken cancellation = default)
    {
        var answer = await AskAsync("*IDN?", cancellation).ConfigureAwait(false);
        return Identification.Read(answer)
            ?? throw new InstrumentException($"To *IDN? it answers \"{answer}\", which is not maker, model, serial number and firmware.");
    }

    /// <summary>Measures a d.c. voltage, in volts.</summary>
    /// <inheritdoc cref="AskAsync"/>
    public Task<InstrumentReading> ReadVoltsAsync(CancellationToken cancellation = default) => ReadAsync("MEAS:VOLT:DC?", cancellation);

    /// <summary>
    /// Measures a direct current, in amperes. The instrument switches to its current range, which is nearly a short circuit: never with its
    /// probes across an outlet.
    /// </summary>
    /// <inheritdoc cref="AskAsync"/>
    public Task<InstrumentReading> ReadAmpsAsync(CancellationToken cancellation = default) => ReadAsync("MEAS:CURR:DC?", cancellation);

    /// <summary>Measures as it is set, in the unit of that.</summary>
    /// <inheritdoc cref="AskAsync"/>
    public Task<InstrumentReading> ReadAsync(CancellationToken cancellation = default) => ReadAsync("READ?", cancellation);

    /// <summary>Asks one thing, and then for errors until there are none.</summary>
    /// <param name="question">The question, without its end of line.</param>
    /// <param name="cancellation">Stops waiting; the instrument cannot be asked again after it.</param>
    /// <exception cref="InstrumentException">It does not answer in time or not as it should, or reports an error.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task<string> AskAsync(string question, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(question);
        await _turn.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            var answer = await AskOnceAsync(question, cancellation).ConfigureAwait(false);
            List<string> errors = [];
            for (var asked = 0; asked < MostErrors; asked++)
            {
                var listed = await AskOnceAsync("SYST:ERR?", cancellation).ConfigureAwait(false);
                if (InstrumentError.Read(listed) is not { } error)
                    throw Broken($"to SYST:ERR? it answers \"{listed}\", which is no number and message");
                if (error.Code == 0)
                    break;
                errors.Add($"{error.Message} ({error.Code})");
            }

            return errors.Count == 0 ? answer : throw new InstrumentException($"To {question} it reports: {string.Join("; ", errors)}.");
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _broken ??= "it is closed";
        await _lines.DisposeAsync().ConfigureAwait(false);

        // The turn is left to whoever still has it: it holds nothing that must be given back.
    }

    private async Task<InstrumentReading> ReadAsync(string question, CancellationToken cancellation)
    {
        var answer = await AskAsync(question, cancellation).ConfigureAwait(false);
        return InstrumentReading.TryRead(answer, out var reading)
            ? reading
            : throw new InstrumentException($"To {question} it answers \"{answer}\", which is not a number.");
    }

    private async Task<string> AskOnceAsync(string question, CancellationToken cancellation)
    {
        if (_broken is not null)
            throw new InstrumentException($"The instrument cannot be asked any more: {_broken}. Connect it again.");
        try
        {
            // A serial port may not heed a request to stop; the wait ends all the same, and the answer, should it come, is not taken for
            // the next one.
            var answer = SendAndReadAsync(question, cancellation);
            return await answer.WaitAsync(_options.Timeout, _options.Clock, cancellation).ConfigureAwait(false)
                ?? throw Broken("it has closed the connection");
        }
        catch (TimeoutException)
        {
            throw Broken(FormattableString.Invariant($"to {question} it gave no answer within {_options.Timeout.TotalSeconds:0.###} s"));
        }
        catch (OperationCanceledException)
        {
            Broken($"waiting for its answer to {question} was stopped");
            throw;
        }
        catch (Exception fault) when (fault is IOException or ObjectDisposedException or UnauthorizedAccessException)
        {
            // The last is what an adaptor that is pulled out says on some systems.
            Broken("the connection is lost");
            throw new InstrumentException($"The connection to the instrument is lost: {fault.Message}", fault);
        }
        catch (InstrumentException fault)
        {
            _broken ??= fault.Message.TrimEnd('.');
            throw;
        }
    }

    private async Task<string?> SendAndReadAsync(string question, CancellationToken cancellation)
    {
        await _lines.WriteAsync(question, cancellation).ConfigureAwait(false);
        return await _lines.ReadAsync(cancellation).ConfigureAwait(false);
    }

    /// <summary>Answers and questions may be out of step from here on, so that none is asked any more.</summary>
    private InstrumentException Broken(string why)
    {
        _broken ??= why;
        return new InstrumentException($"The instrument does not answer as it should: {why}.");
    }
}
