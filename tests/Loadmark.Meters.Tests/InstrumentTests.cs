using System.Net;
using System.Net.Sockets;
using Loadmark.Meters.Instruments;
using Loadmark.Meters.Scpi;
using Loadmark.Meters.Simulated;

namespace Loadmark.Meters.Tests;

public sealed class InstrumentTests
{
    private static readonly InstrumentOptions Hasty = new() { Timeout = TimeSpan.FromMilliseconds(300) };

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Reads_a_simulated_instrument_over_the_network()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([9.02, double.PositiveInfinity, double.NaN], [0.2101]));
        await using var instrument = await InstrumentPort.ConnectAsync("127.0.0.1", simulated.Port, cancellation: Cancellation);
        Assert.Equal(new Identification("Loadmark", "Simulated meter", null, "1"), await instrument.IdentifyAsync(Cancellation));
        Assert.Equal(new InstrumentReading(9.02, ReadingState.Measured, "+9.02000000E+00"), await instrument.ReadVoltsAsync(Cancellation));
        Assert.Equal(0.2101, (await instrument.ReadAmpsAsync(Cancellation)).Value);
        Assert.Equal(ReadingState.OverRange, (await instrument.ReadAsync(Cancellation)).State);
        Assert.Equal(ReadingState.NotANumber, (await instrument.ReadAsync(Cancellation)).State);
        await using var second = await InstrumentPort.ConnectAsync("localhost", simulated.Port, cancellation: Cancellation);
        Assert.Equal(9.02, (await second.ReadVoltsAsync(Cancellation)).Value);
    }

    [Fact]
    public async Task Questions_asked_at_once_are_answered_one_by_one()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([9], [0.2]));
        await using var instrument = await InstrumentPort.ConnectAsync("127.0.0.1", simulated.Port, cancellation: Cancellation);
        var answers = await Task.WhenAll(Enumerable.Range(0, 40).Select(place => place % 2 == 0 ? instrument.ReadVoltsAsync(Cancellation) : instrument.ReadAmpsAsync(Cancellation)));
        Assert.Equal(Enumerable.Range(0, 40).Select(static place => place % 2 == 0 ? 9 : 0.2), answers.Select(static answer => answer.Value));
    }

    [Fact]
    public async Task What_the_instrument_reports_is_told_and_it_can_be_asked_again()
    {
        await using var fake = new FakeInstrument(static line => line switch
        {
            "MEAS:VOLT:DC?" => "+1.0E+00\n",
            "SYST:ERR?" => null,
            _ => "0\n",
        }, ["-222,\"Data out of range\"", "-113,\"Undefined header\"", "0,\"No error\"", "0,\"No error\""]);
        await using var instrument = await fake.ConnectAsync(new InstrumentOptions());
        var fault = await Assert.ThrowsAsync<InstrumentException>(() => instrument.ReadVoltsAsync(Cancellation));
        Assert.Equal("To MEAS:VOLT:DC? it reports: Data out of range (-222); Undefined header (-113).", fault.Message);
        Assert.Equal(1, (await instrument.ReadVoltsAsync(Cancellation)).Value);
    }

    /// <summary>What it lists of an earlier talk is none of this one's.</summary>
    [Fact]
    public async Task Errors_that_were_listed_before_do_not_keep_from_connecting()
    {
        var simulated = new SimulatedMeter([9.02], [0.2101]);
        Assert.Null(simulated.Answer("nonsense"));
        await using var served = new SimulatedInstrument(simulated);
        var address = new InstrumentAddress("127.0.0.1", served.Port, IsSerial: false);
        await using var met = await InstrumentPort.MeetAsync(address, cancellation: Cancellation);
        Assert.Equal("Simulated meter", met.Identification.Model);
        Assert.Equal(9.02m, (await met.ReadAsync(amps: false, Cancellation)).Figure);
        Assert.Equal(0.2101m, (await met.ReadAsync(amps: true, Cancellation)).Figure);
        Assert.True(met.CanBeAsked);
    }

    [Fact]
    public async Task No_answer_ends_in_time_and_what_comes_late_is_not_taken_for_another()
    {
        await using var fake = new FakeInstrument(static _ => "", []);
        await using var instrument = await fake.ConnectAsync(Hasty);
        var fault = await Assert.ThrowsAsync<InstrumentException>(() => instrument.ReadVoltsAsync(Cancellation));
        Assert.Equal("The instrument does not answer as it should: to MEAS:VOLT:DC? it gave no answer within 0.3 s.", fault.Message);
        fault = await Assert.ThrowsAsync<InstrumentException>(() => instrument.ReadAmpsAsync(Cancellation));
        Assert.Equal("The instrument cannot be asked any more: to MEAS:VOLT:DC? it gave no answer within 0.3 s. Connect it again.", fault.Message);
    }

    [Fact]
    public async Task Who_stops_waiting_is_not_held()
    {
        await using var fake = new FakeInstrument(static _ => "", []);
        await using var instrument = await fake.ConnectAsync(new InstrumentOptions { Timeout = TimeSpan.FromMinutes(10) });
        using var source = new CancellationTokenSource();
        var asked = instrument.IdentifyAsync(source.Token);
        Assert.False(asked.IsCompleted);
        await source.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => asked.WaitAsync(TimeSpan.FromSeconds(20), Cancellation));
        await Assert.ThrowsAsync<InstrumentException>(() => instrument.IdentifyAsync(Cancellation));
    }

    [Fact]
    public async Task Who_waits_when_it_is_closed_is_told()
    {
        await using var fake = new FakeInstrument(static _ => "", []);
        var instrument = await fake.ConnectAsync(new InstrumentOptions { Timeout = TimeSpan.FromMinutes(10) });
        var asked = instrument.IdentifyAsync(Cancellation);
        var next = instrument.IdentifyAsync(Cancellation);
        await instrument.DisposeAsync();
        await Assert.ThrowsAsync<InstrumentException>(() => asked.WaitAsync(TimeSpan.FromSeconds(20), Cancellation));
        Assert.StartsWith(
            "The instrument cannot be asked any more: ", (await Assert.ThrowsAsync<InstrumentException>(() => next.WaitAsync(TimeSpan.FromSeconds(20), Cancellation))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ready\n", "To MEAS:VOLT:DC? it answers \"ready\", which is not a number.")]
    [InlineData("9.02 volts or so\n", "To MEAS:VOLT:DC? it answers \"9.02 volts or so\", which is not a number.")]
    [InlineData(null, "What it answers has no end within 4096 bytes: is it an instrument that speaks SCPI?")]
    public async Task What_is_no_answer_is_told(string? answer, string expected)
    {
        await using var fake = new FakeInstrument(line => line == "MEAS:VOLT:DC?" ? answer ?? new string('9', 5000) : "0,\"No error\"\n", []);
        await using var instrument = await fake.ConnectAsync(new InstrumentOptions());
        Assert.Equal(expected, (await Assert.ThrowsAsync<InstrumentException>(() => instrument.ReadVoltsAsync(Cancellation))).Message);
    }

    [Fact]
    public async Task Nobody_there_and_a_closed_connection_are_told()
    {
        await using (var fake = new FakeInstrument(static _ => null, []))
        {
            await using var instrument = await fake.ConnectAsync(new InstrumentOptions());
            Assert.Equal("The instrument does not answer as it should: it has closed the connection.", (await Assert.ThrowsAsync<InstrumentException>(() => instrument.IdentifyAsync(Cancellation))).Message);
        }

        int free;
        using (var listener = new TcpListener(IPAddress.Loopback, 0))
        {
            listener.Start();
            free = ((IPEndPoint)listener.LocalEndpoint).Port;
        }

        var fault = await Assert.ThrowsAsync<InstrumentException>(() => InstrumentPort.ConnectAsync("127.0.0.1", free, cancellation: Cancellation));
        Assert.StartsWith($"No instrument takes a connection at 127.0.0.1, port {free}: ", fault.Message, StringComparison.Ordinal);
        Assert.StartsWith("The serial port /dev/no-such-port cannot be opened: ", Assert.Throws<InstrumentException>(static () => InstrumentPort.Open("/dev/no-such-port")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("9.02", 9.02, ReadingState.Measured)]
    [InlineData("+9.02134500E+00", 9.021345, ReadingState.Measured)]
    [InlineData("9.02 VDC", 9.02, ReadingState.Measured)]
    [InlineData("-3,4", -3, ReadingState.Measured)]
    [InlineData("9.9E37", 0, ReadingState.OverRange)]
    [InlineData("-9.90000000E+37", 0, ReadingState.OverRange)]
    [InlineData("9.91E37", 0, ReadingState.NotANumber)]
    [InlineData("1E99", 0, ReadingState.OverRange)]
    [InlineData("1E99999", 0, ReadingState.OverRange)]
    [InlineData("nan", 0, ReadingState.NotANumber)]
    [InlineData("-INF", 0, ReadingState.OverRange)]
    public void Values_beyond_the_range_are_no_values(string text, double value, ReadingState state)
    {
        Assert.True(InstrumentReading.TryRead(text, out var reading));
        Assert.Equal((value, state), (reading.Value, reading.State));
    }

    [Theory]
    [InlineData("A,B,C,D", "A", "B", "C", "D")]
    [InlineData(" A , B ,0, 1.2,3 ", "A", "B", null, "1.2,3")]
    public void Identifies_itself(string answer, string maker, string model, string? serial, string firmware) =>
        Assert.Equal(new Identification(maker, model, serial, firmware), Identification.Read(answer));

    [Theory]
    [InlineData("")]
    [InlineData("A,B,C")]
    [InlineData(",B,C,D")]
    public void What_is_no_identification_is_none(string answer) => Assert.Null(Identification.Read(answer));

    [Theory]
    [InlineData("-113,\"Undefined header\"", -113, "Undefined header")]
    [InlineData("+0, \"No error\"", 0, "No error")]
    [InlineData("0", 0, "")]
    public void Reads_errors(string answer, int code, string message) => Assert.Equal(new InstrumentError(code, message), InstrumentError.Read(answer));

    [Theory]
    [InlineData("No error")]
    [InlineData("1.5,\"x\"")]
    [InlineData("0 \"x\"")]
    [InlineData("99999999999,\"x\"")]
    public void What_is_no_error_is_none(string answer) => Assert.Null(InstrumentError.Read(answer));
}
