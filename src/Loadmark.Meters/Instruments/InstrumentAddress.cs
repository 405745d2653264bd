using System.Globalization;
using System.Net;

namespace Loadmark.Meters.Instruments;

/// <summary>Where an instrument is: a host and its port, or a serial port and its speed.</summary>
/// <param name="Name">The host's name or address, or the serial port's name as the system has it.</param>
/// <param name="Number">The port, 1 to 65535; of a serial port the symbols in a second.</param>
/// <param name="IsSerial">Whether it is a serial port.</param>
public sealed record InstrumentAddress(string Name, int Number, bool IsSerial)
{
    /// <summary>The speed of a serial port where none is said, in symbols a second.</summary>
    public const int CommonBaud = 9600;

    private const int HighestBaud = 10_000_000;

    /// <summary>Reads what was typed: <c>host</c>, <c>host:port</c>, <c>/dev/ttyUSB0</c>, <c>COM3:19200</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="complaint">What is wrong with it, as a sentence; empty where nothing is.</param>
    /// <returns>Null where it is no address.</returns>
    public static InstrumentAddress? Read(string text, out string complaint)
    {
        ArgumentNullException.ThrowIfNull(text);
        var typed = text.Trim();
        complaint = "";
        if (IsSerialName(typed))
            return Serial(typed, ref complaint);

        // An address of IPv6 has colons of its own, so that its port stands behind a bracket.
        var (host, port) = (typed, (string?)null);
        var colon = typed.LastIndexOf(':');
        if (typed.StartsWith('[') && typed.IndexOf(']') is > 0 and var bracket && (bracket == typed.Length - 1 || colon == bracket + 1))
            (host, port) = (typed[1..bracket], colon > bracket ? typed[(colon + 1)..] : null);
        else if (colon >= 0 && !IPAddress.TryParse(typed, out _))
            (host, port) = (typed[..colon], typed[(colon + 1)..]);

        if (Uri.CheckHostName(host) == UriHostNameType.Unknown || typed.Contains('/', StringComparison.Ordinal))
        {
            complaint = $"Expected a host, a host with a port such as 192.0.2.7:{InstrumentPort.TcpPort}, or a serial port such as "
                + $"/dev/ttyUSB0 or COM3:19200; found '{typed}'.";
            return null;
        }

        var number = InstrumentPort.TcpPort;
        if (port is null || (TryCount(port, out number) && number <= ushort.MaxValue))
            return new InstrumentAddress(host, number, IsSerial: false);
        complaint = $"Expected a port from 1 to {ushort.MaxValue} behind the host; found '{port}'.";
        return null;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{(Name.Contains(':', StringComparison.Ordinal) && !IsSerial ? $"[{Name}]" : Name)}:{Number}");

    private static bool IsSerialName(string text) =>
        text.StartsWith('/')
        || (text.StartsWith("COM", StringComparison.OrdinalIgnoreCase) && text.Length > 3 && char.IsAsciiDigit(text[3])
            && text.AsSpan(3).TrimStart("0123456789") is [] or [':', ..]);

    /// <summary>Names of serial ports may have colons in them: only a number behind the last one is a speed.</summary>
    private static InstrumentAddress? Serial(string typed, ref string complaint)
    {
        var colon = typed.LastIndexOf(':');
        if (colon < 0 || typed.AsSpan(colon + 1).ContainsAnyExceptInRange('0', '9'))
            return new InstrumentAddress(typed, CommonBaud, IsSerial: true);
        if (TryCount(typed[(colon + 1)..], out var baud) && baud <= HighestBaud)
            return new InstrumentAddress(typed[..colon], baud, IsSerial: true);
        complaint = $"Expected the speed of the serial port behind the colon, such as 9600; found '{typed[(colon + 1)..]}'.";
        return null;
    }

    private static bool TryCount(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number > 0;
}
