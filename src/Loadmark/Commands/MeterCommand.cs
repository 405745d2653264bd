using System.Globalization;
using System.Net.Sockets;
using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Meters.Instruments;
using Loadmark.Meters.Simulated;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;

namespace Loadmark.Commands;

/// <summary><c>loadmark meter</c>: what does the meter read?</summary>
internal sealed class MeterCommand(CommandInput input)
{
    private static readonly OptionSpec Amps = new(
        "amps",
        OptionKind.Flag,
        "Read amps instead of volts. The meter goes to its current range: other sockets, in series, never across a supply.");

    private static readonly OptionSpec Port = new(
        "port", OptionKind.Number, $"The port of the simulated meter, {InstrumentPort.TcpPort} unless said. 0 takes any that is free.")
    { Placeholder = "N" };

    private static readonly OptionSpec Simulate = new(
        "simulate", OptionKind.Flag, "Be a meter that is not there, on this machine alone, until Ctrl-C.")
    { With = Port };

    private readonly ProcessContext _process = input.Process;

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = "what does the meter read?",
        Parameters =
        [
            new(
                "ADDRESS",
                $"The meter: a host, a host with a port (host:{InstrumentPort.TcpPort}), or a serial port with its speed (/dev/ttyUSB0, "
                + "COM3:19200). Not with --simulate."),
        ],
        Options = [Amps, Simulate],
        Needs = "the address of one meter",
        Json = "One object: address, instrument, volts or amps, sent.",
        Note = "The meter must speak SCPI. Exit code 1 means that what it read is no value.",
        Example = "loadmark meter 192.0.2.7",
        Documentation = "docs/meters.md",
        AnswersAtOnce = true,
        Run = static input => new MeterCommand(input).Run(),
    };

    /// <summary>Reads once, or serves a simulated meter.</summary>
    private int Run()
    {
        if (input.Has(Simulate))
            return RunSimulated();
        if (input.Has(Port))
            return input.Refuse($"{Port.Typed} is the port of a simulated meter; it needs {Simulate.Typed}.");
        if (input.Words is not [var typed])
            return input.Refuse();
        if (InstrumentAddress.Read(typed, out var complaint) is not { } address)
            return input.Refuse(complaint);
        return ReadAsync(address, _process.Interruption()).GetAwaiter().GetResult();
    }

    private async Task<int> ReadAsync(InstrumentAddress address, CancellationToken stop)
    {
        var amps = input.Has(Amps);
        if (amps)
            input.Complaints.Warn(
                "reading amps puts the meter on its current range, which is nearly a short circuit. The probes belong in its current "
                + "sockets and in series with one load, never across a supply.");
        try
        {
            using var wait = new WaitNotice(_process, $"waiting for {TerminalText.Neutral(address.ToString())}");
            var meter = await InstrumentPort.MeetAsync(address, cancellation: stop);
            await using (meter)
            {
                var answer = new MeterAnswer(address, meter.Identification, amps, await meter.ReadAsync(amps, stop));
                if (input.Json)
                    MeterJson.Write(_process.Output, answer);
                else
                    SheetPrinter.Print(_process, sheet => MeterPage.Write(sheet, answer));
                return answer.Reading.Figure is null ? ExitCode.Refused : ExitCode.Fine;
            }
        }
        catch (InstrumentException fault)
        {
            return input.Complaints.Unusable(fault.Message);
        }
    }

    private int RunSimulated()
    {
        if (input.Words.Count > 0 || input.Has(Amps) || input.Json)
            return input.Refuse($"{Simulate.Typed} serves a meter; beside it stands {Port.Typed} alone.");
        var port = InstrumentPort.TcpPort;
        if (input.Text(Port) is { } typed
            && (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out port) || port > ushort.MaxValue))
            return input.Refuse($"--port: expected a number from 0 (any that is free) to {ushort.MaxValue}, found '{typed}'.");
        try
        {
            return ServeAsync(port, _process.Interruption()).GetAwaiter().GetResult();
        }
        catch (SocketException fault)
        {
            return input.Complaints.Unusable(
                $"port {port} cannot be listened at: {fault.Message}. Name another with {Port.Typed}, or 0 for any that is free.");
        }
    }

    private async Task<int> ServeAsync(int port, CancellationToken stop)
    {
        var meter = SimulatedMeter.OfBench();
        await using var instrument = new SimulatedInstrument(meter, port: port);
        await using (var output = new StreamWriter(_process.Output, _process.OutputEncoding, leaveOpen: true))
        {
            await output.WriteLineAsync($"A simulated meter is at 127.0.0.1:{instrument.Port}  (Ctrl-C ends it)");
            await output.WriteLineAsync($"Read it with: loadmark meter 127.0.0.1:{instrument.Port}");
        }

        var ended = new TaskCompletionSource();
        using var registration = stop.Register(ended.SetResult);
        await ended.Task;
        return ExitCode.Fine;
    }
}
