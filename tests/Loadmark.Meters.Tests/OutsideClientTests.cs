using System.Diagnostics;
using System.Globalization;
using Loadmark.Meters.Simulated;

namespace Loadmark.Meters.Tests;

/// <summary>The simulated meter is read by a client that is not ours: PyVISA with PyVISA-py, as Debian has them.</summary>
[Trait("Source", "PyVISA-py")]
public sealed class OutsideClientTests
{
    private const string Script = """
        import sys, pyvisa
        meter = pyvisa.ResourceManager("@py").open_resource(
            "TCPIP::127.0.0.1::" + sys.argv[1] + "::SOCKET", read_termination="\n", write_termination="\n", timeout=10000)
        print(meter.query("*IDN?"))
        print(meter.query_ascii_values("MEAS:VOLT:DC?")[0], meter.query_ascii_values("measure?")[0], float(meter.query("READ?")))
        print(meter.query_ascii_values("MEASure:CURRent:DC?")[0])
        meter.write("MEAS:RES?")
        print(meter.query("SYST:ERR?"), meter.query("SYSTem:ERRor:NEXT?"))
        meter.write("*ESE #H20")
        print(meter.query("*ESE?;*ESR?;*ESR?"))
        """;

    [Fact]
    public async Task Reads_the_simulated_meter()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([9.02, -0.25, double.PositiveInfinity], [0.2101]));
        using var process = Process.Start(new ProcessStartInfo("/usr/bin/python3", ["-c", Script, simulated.Port.ToString(CultureInfo.InvariantCulture)])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await error);
        Assert.Equal(
            """
            Loadmark,Simulated meter,0,1
            9.02 -0.25 9.9e+37
            0.2101
            -113,"Undefined header" 0,"No error"
            32;32;0

            """.ReplaceLineEndings("\n"), output);
    }
}
