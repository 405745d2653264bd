using System.IO.Ports;
using System.Net.Sockets;
using Loadmark.Meters.Scpi;

namespace Loadmark.Meters.Instruments;

/// <summary>Connects to instruments.</summary>
public static class InstrumentPort
{
    /// <summary>The port at which instruments take lines of SCPI over TCP: <c>scpi-raw</c> in the list of IANA.</summary>
    public const int TcpPort = 5025;

    /// <summary>Connects over a network or a serial port, and asks the instrument what it is.</summary>
    /// <param name="address">Where it is.</param>
    /// <param name="options">How to talk to it; its timeout holds for connecting too.</param>
    /// <param name="cancellation">Stops connecting.</param>
    /// <exception cref="InstrumentException">Nobody is there, or what is there does not answer as an instrument.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<ConnectedInstrument> MeetAsync(
        InstrumentAddress address, InstrumentOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(address);
        options ??= new InstrumentOptions();
        var instrument = address.IsSerial
            ? await OpenAsync(address, options, cancellation).ConfigureAwait(false)
            : await ConnectAsync(address.Name, address.Number, options, cancellation).ConfigureAwait(false);
        try
        {
            return new ConnectedInstrument(address, instrument, await IdentifyAsync(instrument, cancellation).ConfigureAwait(false));
        }
        catch (InstrumentException fault)
        {
            await ConnectedInstrument.CloseAsync(instrument).ConfigureAwait(false);
            throw new InstrumentException(
                $"At {address} something takes the connection, but does not say what it is as an instrument would. {fault.Message}", fault);
        }
        catch
        {
            await ConnectedInstrument.CloseAsync(instrument).ConfigureAwait(false);
            throw;
        }
    }

    /// <summary>Connects over a network.</summary>
    /// <param name="host">The instrument's name or address.</param>
    /// <param name="port">Its port, 1 to 65535.</param>
    /// <param name="options">How to talk to it; its timeout holds for connecting too.</param>
    /// <param name="cancellation">Stops connecting.</param>
    /// <exception cref="InstrumentException">Nothing takes the connection in time.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static async Task<Instrument> ConnectAsync(
        string host, int port = TcpPort, InstrumentOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(host);
        ArgumentOutOfRangeException.ThrowIfLessThan(port, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(port, ushort.MaxValue);
        options ??= new InstrumentOptions();
        var client = new TcpClient { NoDelay = true };
        try
        {
            var connected = client.ConnectAsync(host, port, cancellation).AsTask();
            await connected.WaitAsync(options.Timeout, options.Clock, cancellation).ConfigureAwait(false);
            return new Instrument(client.GetStream(), options);
        }
        catch (Exception fault) when (fault is SocketException or TimeoutException)
        {
            client.Dispose();
            throw new InstrumentException($"No instrument takes a connection at {host}, port {port}: {fault.Message}", fault);
        }
        catch
        {
            client.Dispose();
            throw;
        }
    }

    /// <summary>Opens a serial port: 8 data bits, no parity, one stop bit.</summary>
    /// <param name="name">The port's name, as the system has it.</param>
    /// <param name="baud">Symbols in a second, over zero: as the instrument is set.</param>
    /// <param name="options">How to talk to it.</param>
    /// <exception cref="InstrumentException">There is no such port, or it may not be opened.</exception>
    public static Instrument Open(string name, int baud = 9600, InstrumentOptions? options = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(baud);
        var port = new SerialPort(name, baud, Parity.None, dataBits: 8, StopBits.One);
        try
        {
            port.Open();
            return new Instrument(port.BaseStream, options);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or InvalidOperationException
            or PlatformNotSupportedException)
        {
            port.Dispose();
            throw new InstrumentException($"The serial port {name} cannot be opened: {fault.Message}", fault);
        }
    }

    /// <summary>
    /// Errors of an earlier talk may still be listed, and are told at the first question. They are gone once they are read, so that the
    /// question is asked again where the instrument is still in step.
    /// </summary>
    private static async Task<Identification> IdentifyAsync(Instrument instrument, CancellationToken cancellation)
    {
        try
        {
            return await instrument.IdentifyAsync(cancellation).ConfigureAwait(false);
        }
        catch (InstrumentException) when (!instrument.IsOutOfStep)
        {
            return await instrument.IdentifyAsync(cancellation).ConfigureAwait(false);
        }
    }

    /// <summary>A driver may take long to open a port; nobody waits for it, and what opens late is closed.</summary>
    private static async Task<Instrument> OpenAsync(InstrumentAddress address, InstrumentOptions options, CancellationToken cancellation)
    {
        var opened = Task.Run(() => Open(address.Name, address.Number, options), cancellation);
        try
        {
            return await opened.WaitAsync(options.Timeout, options.Clock, cancellation).ConfigureAwait(false);
        }
        catch (Exception fault) when (fault is TimeoutException or OperationCanceledException)
        {
            _ = opened.ContinueWith(
                static late => ConnectedInstrument.CloseAsync(late.Result).AsTask(),
                CancellationToken.None, TaskContinuationOptions.OnlyOnRanToCompletion, TaskScheduler.Default);
            if (fault is OperationCanceledException)
                throw;
            throw new InstrumentException($"The serial port {address.Name} does not open in time.", fault);
        }
    }

    /// <summary>The names of the serial ports that the system has.</summary>
    public static IReadOnlyList<string> SerialPorts() => SerialPort.GetPortNames();
}
