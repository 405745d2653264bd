using System.Globalization;
using Loadmark.Meters.Scpi;

namespace Loadmark.Meters.Simulated;

/// <summary>
/// A meter that is not there: it answers lines of SCPI with values that it was given, one after the other, and begins again after the last.
/// Status and errors are as IEEE 488.2 and SCPI-99 have them (from memory; its answers are checked against the vectors of an open parser).
/// </summary>
public sealed class SimulatedMeter
{
    /// <summary>As much as the error queue holds; then the last becomes -350, "Queue overflow" (SCPI-99, 21.8.1; from memory).</summary>
    private const int MostErrors = 20;
    private const int CommandError = 32;
    private const int ErrorsWaiting = 4;
    private const int EventSummary = 32;
    private const int MasterSummary = 64;

    private readonly IReadOnlyList<double> _volts;
    private readonly IReadOnlyList<double> _amps;
    private readonly List<MeterReply> _replies = [];
    private readonly Queue<InstrumentError> _errors = [];
    private int _voltsRead;
    private int _ampsRead;
    private int _eventStatus;
    private int _eventEnable;
    private int _requestEnable;

    /// <summary>A meter that shows these values.</summary>
    /// <param name="volts">What it reads of voltage; at least one. Infinite ones are sent as beyond the range.</param>
    /// <param name="amps">What it reads of current; at least one.</param>
    public SimulatedMeter(IReadOnlyList<double> volts, IReadOnlyList<double> amps)
    {
        ArgumentNullException.ThrowIfNull(volts);
        ArgumentNullException.ThrowIfNull(amps);
        ArgumentOutOfRangeException.ThrowIfZero(volts.Count, nameof(volts));
        ArgumentOutOfRangeException.ThrowIfZero(amps.Count, nameof(amps));
        (_volts, _amps) = (volts, amps);
        Add("*IDN?", static _ => "Loadmark,Simulated meter,0,1");
        Add("*RST", _ => Silent(() => (_voltsRead, _ampsRead) = (0, 0)));
        Add("*CLS", _ => Silent(Clear));
        Add("*ESE", argument => SetByte(argument, value => _eventEnable = value));
        Add("*ESE?", _ => Text(_eventEnable));
        Add("*ESR?", _ => Text(TakeEvents()));
        Add("*SRE", argument => SetByte(argument, value => _requestEnable = value));
        Add("*SRE?", _ => Text(_requestEnable));
        Add("*STB?", _ => Text(StatusByte()));
        Add("*OPC?", static _ => "1");
        Add("*TST?", static _ => "0");
        Add("*WAI", static _ => null);
        Add("SYSTem:VERSion?", static _ => "1999.0");
        Add("SYSTem:ERRor[:NEXT]?", _ => NextError());
        Add("MEASure[:VOLTage][:DC]?", _ => Value(_volts, ref _voltsRead));
        Add("MEASure:CURRent[:DC]?", _ => Value(_amps, ref _ampsRead));
        Add("READ?", _ => Value(_volts, ref _voltsRead));
        Add("FETCh?", _ => Value(_volts, ref _voltsRead));
    }

    /// <summary>A meter as it would stand at a bench: some nine volts and some 210 mA, which waver a little.</summary>
    public static SimulatedMeter OfBench() => new([9.02, 9.01, 9.03], [0.2101, 0.2098]);

    /// <summary>Takes a line and gives the answers to its questions, separated by semicolons.</summary>
    /// <param name="line">Commands separated by semicolons, without the end of line.</param>
    /// <returns>Null where nothing was asked.</returns>
    public string? Answer(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var answers = new List<string>();
        var path = "";
        foreach (var command in line.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            // A header goes on from where the one before it stood, unless it begins at the root or is a common one.
            var space = command.IndexOfAny([' ', '\t']);
            var header = space < 0 ? command : command[..space];
            var isCommon = header[0] == '*';
            var whole = isCommon || header[0] == ':' ? header.TrimStart(':') : path + header;
            if (_replies.Find(reply => reply.Header.Matches(whole)) is not { } known)
            {
                Report(new InstrumentError(-113, "Undefined header"));
                continue;
            }

            if (!isCommon)
                path = whole[..(whole.LastIndexOf(':') + 1)];
            if (known.Reply(space < 0 ? "" : command[space..].Trim()) is { } answer)
                answers.Add(answer);
        }

        return answers.Count == 0 ? null : string.Join(';', answers);
    }

    private void Add(string header, Func<string, string?> reply) => _replies.Add(new MeterReply(new HeaderPattern(header), reply));

    private void Report(InstrumentError error)
    {
        _eventStatus |= CommandError;
        if (_errors.Count < MostErrors)
            _errors.Enqueue(_errors.Count < MostErrors - 1 ? error : new InstrumentError(-350, "Queue overflow"));
    }

    private string NextError()
    {
        var error = _errors.TryDequeue(out var first) ? first : new InstrumentError(0, "No error");
        return string.Create(CultureInfo.InvariantCulture, $"{error.Code},\"{error.Message}\"");
    }

    private int TakeEvents()
    {
        var events = _eventStatus;
        _eventStatus = 0;
        return events;
    }

    private int StatusByte()
    {
        var status = (_errors.Count > 0 ? ErrorsWaiting : 0) | ((_eventStatus & _eventEnable) != 0 ? EventSummary : 0);
        return status | ((status & _requestEnable) != 0 ? MasterSummary : 0);
    }

    private void Clear()
    {
        _errors.Clear();
        _eventStatus = 0;
    }

    private string? SetByte(string argument, Action<int> set)
    {
        if (ScpiNumber.Read(argument, out var value, out var length) == NumberForm.None || length != argument.Length)
            Report(argument.Length == 0 ? new InstrumentError(-109, "Missing parameter") : new InstrumentError(-104, "Data type error"));
        else if (value is < 0 or > byte.MaxValue)
            Report(new InstrumentError(-222, "Data out of range"));
        else
            set((int)Math.Round(value));
        return null;
    }

    private static string? Silent(Action act)
    {
        act();
        return null;
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Value(IReadOnlyList<double> values, ref int read)
    {
        var value = values[read++ % values.Count];
        return double.IsNaN(value) ? "9.91E+37"
            : double.IsInfinity(value) ? value > 0 ? "9.9E+37" : "-9.9E+37"
            : value.ToString("+0.00000000E+00;-0.00000000E+00", CultureInfo.InvariantCulture);
    }
}
