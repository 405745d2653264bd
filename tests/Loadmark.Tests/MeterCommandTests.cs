using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using Loadmark.Commands;
using Loadmark.Meters.Simulated;
using Loadmark.Processes;

namespace Loadmark.Tests;

/// <summary><c>loadmark meter</c>, over real connections within this machine.</summary>
public sealed class MeterCommandTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_says_what_the_meter_is_and_reads_once()
    {
        await using var meter = new SimulatedInstrument(new SimulatedMeter([9.02, 5], [0.2101]));
        var address = $"127.0.0.1:{meter.Port}";
        var (code, output, error) = await RunAsync(CancellationToken.None, "meter", address);
        Assert.Equal((0, ""), (code, error));
        Assert.Equal(
            $"Loadmark Simulated meter at {address}\n  serial    not told\n  firmware  1\n  volts     9.02 V  sent as +9.02000000E+00\n", output);
    }

    [Fact]
    public async Task Amps_are_read_after_a_warning()
    {
        await using var meter = new SimulatedInstrument(new SimulatedMeter([9.02], [0.2101]));
        var (code, output, error) = await RunAsync(CancellationToken.None, "meter", $"127.0.0.1:{meter.Port}", "--amps", "--json");
        Assert.Equal(0, code);
        Assert.Contains("never across a supply", error, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(output);
        Assert.Equal(0.2101m, json.RootElement.GetProperty("amps").GetDecimal());
        Assert.False(json.RootElement.TryGetProperty("volts", out _));
        Assert.Equal("Simulated meter", json.RootElement.GetProperty("instrument").GetProperty("model").GetString());
        Assert.Equal("+2.10100000E-01", json.RootElement.GetProperty("sent").GetString());
    }

    [Fact]
    public async Task What_is_no_value_ends_with_1()
    {
        await using var meter = new SimulatedInstrument(new SimulatedMeter([double.PositiveInfinity, double.NaN], [0.2101]));
        var (code, output, _) = await RunAsync(CancellationToken.None, "meter", $"127.0.0.1:{meter.Port}");
        Assert.Equal(1, code);
        Assert.Contains("volts     beyond the range  sent as 9.9E+37", output, StringComparison.Ordinal);
        (code, output, _) = await RunAsync(CancellationToken.None, "meter", $"127.0.0.1:{meter.Port}", "--json");
        using var json = JsonDocument.Parse(output);
        Assert.Equal((1, JsonValueKind.Null), (code, json.RootElement.GetProperty("volts").ValueKind));
        Assert.Equal("not a number", json.RootElement.GetProperty("whyNone").GetString());
    }

    /// <summary>Nobody is there; something answers that is no instrument; an instrument does not know the question.</summary>
    [Fact]
    public async Task Who_does_not_answer_as_a_meter_is_told_and_ends_with_2()
    {
        await AssertToldAsync(null, "No instrument takes a connection at 127.0.0.1, port ");
        await AssertToldAsync(
            static _ => "HTTP/1.1 400 Bad Request",
            "something takes the connection, but does not say what it is as an instrument would. The instrument does not answer as it should: "
            + "to SYST:ERR? it answers \"HTTP/1.1 400 Bad Request\", which is no number and message.");
        var (asked, errors) = ("", new Queue<string>(["-113,\"Undefined header\""]));
        await AssertToldAsync(
            line =>
            {
                if (line == "SYST:ERR?")
                    return asked == "MEAS:VOLT:DC?" && errors.TryDequeue(out var error) ? error : "0";
                asked = line;
                return line == "*IDN?" ? "a,b,0,1" : "0";
            },
            "loadmark: To MEAS:VOLT:DC? it reports: Undefined header (-113).");
    }

    [Theory]
    [InlineData("meter needs the address of one meter.", "meter")]
    [InlineData("meter needs the address of one meter.", "meter", "a", "b")]
    [InlineData("Expected a host", "meter", "http://bench")]
    [InlineData("Expected a port from 1 to 65535", "meter", "bench:70000")]
    [InlineData("it needs --simulate", "meter", "bench", "--port", "1")]
    [InlineData("beside it stands --port alone", "meter", "bench", "--simulate")]
    [InlineData("found '70000'", "meter", "--simulate", "--port", "70000")]
    [InlineData("The serial port /dev/no-such-port cannot be opened", "meter", "/dev/no-such-port")]
    public async Task What_cannot_be_used_is_told(string complaint, params string[] args)
    {
        var (code, output, error) = await RunAsync(CancellationToken.None, args);
        Assert.Equal((2, ""), (code, output));
        Assert.Contains(complaint, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ctrl_C_ends_the_wait_for_an_answer()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        using var source = new CancellationTokenSource();
        var asking = RunAsync(source.Token, "meter", listener.LocalEndpoint.ToString()!);
        using var client = await listener.AcceptTcpClientAsync(Stop);
        using var reader = new StreamReader(client.GetStream());
        Assert.Equal("*IDN?", await reader.ReadLineAsync(Stop));
        var begin = Stopwatch.GetTimestamp();
        await source.CancelAsync();
        var (code, output, _) = await asking.WaitAsync(TimeSpan.FromSeconds(20), Stop);
        Assert.Equal((ExitCode.Interrupted, ""), (code, output));
        Assert.InRange(Stopwatch.GetElapsedTime(begin).TotalSeconds, 0, 2.5); // three seconds is how long an answer may take
    }

    /// <summary>The simulated meter says where it is and how it is read; that command reads it; Ctrl-C ends it.</summary>
    [Fact]
    public async Task The_simulated_meter_is_read_by_the_command_that_it_says()
    {
        using var source = new CancellationTokenSource();
        await using var output = new LineOutput();
        using var error = new StringWriter();
        var process = new ProcessContext { Output = output, Error = error, Input = static () => Stream.Null, Interruption = () => source.Token };
        var serving = Task.Run(
            () => LoadmarkCommand.Run(["meter", "--simulate", "--port", "0"], process, new ProgramRun(), static (_, _) => throw new InvalidOperationException()), Stop);
        const string lead = "Read it with: loadmark ";
        var line = await output.LineAsync(lead, Stop);
        var (code, read, _) = await RunAsync(CancellationToken.None, line[lead.Length..].Split(' '));
        Assert.Equal(0, code);
        Assert.Contains("9.02 V", read, StringComparison.Ordinal);
        var taken = await RunAsync(CancellationToken.None, "meter", "--simulate", "--port", line[(line.LastIndexOf(':') + 1)..]);
        Assert.Equal(2, taken.Code);
        Assert.Contains("cannot be listened at", taken.Error, StringComparison.Ordinal);

        await source.CancelAsync();
        Assert.Equal(0, await serving.WaitAsync(TimeSpan.FromSeconds(20), Stop));
        Assert.Equal("", error.ToString());
    }

    private static Task<ProgramRun.Answer> RunAsync(CancellationToken interruption, params string[] args) =>
        Task.Run(() => ProgramRun.Answering(interruption, args), Stop);

    /// <summary>Runs the command against what answers lines so; null for nobody.</summary>
    private static async Task AssertToldAsync(Func<string, string>? answer, string told)
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        var port = ((IPEndPoint)listener.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture);
        if (answer is null)
            listener.Stop();
        var asking = RunAsync(CancellationToken.None, "meter", $"127.0.0.1:{port}");
        if (answer is not null)
        {
            using var client = await listener.AcceptTcpClientAsync(Stop);
            using var reader = new StreamReader(client.GetStream());
            await using var writer = new StreamWriter(client.GetStream()) { AutoFlush = true, NewLine = "\n" };
            while (await reader.ReadLineAsync(Stop) is { } line)
                await writer.WriteLineAsync(answer(line));
        }

        var (code, output, error) = await asking;
        Assert.Equal((2, ""), (code, output));
        Assert.Contains(told, error, StringComparison.Ordinal);
    }
}
