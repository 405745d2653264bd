using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Simulation.Settling;
using Loadmark.Simulation.Starting;
using Loadmark.Simulation.Wiring;

namespace Loadmark.Simulation.Tests;

/// <summary>Rigs written as a user writes them.</summary>
internal static class RigText
{
    /// <summary>Reads the text of a rig file.</summary>
    public static Rig Read(string text)
    {
        var reading = RigFileReader.Read(text, "test.rig.yaml");
        Assert.True(reading.Rig is not null, string.Join('\n', reading.Errors));
        return reading.Rig;
    }

    /// <summary>One of the examples.</summary>
    public static Rig Example(string name) => Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", name + ".rig.yaml")));

    /// <summary>The circuit of a text.</summary>
    public static RigCircuit Circuit(string text) => RigCircuit.Of(WiredRig.Of(Read(text)));

    /// <summary>The steady state of a text.</summary>
    public static SettleResult Settle(string text) => Settle(Read(text));

    /// <summary>The steady state of a rig.</summary>
    public static SettleResult Settle(Rig rig) => RigSimulator.Settle(rig, cancellation: TestContext.Current.CancellationToken);

    /// <summary>The first seconds of a text.</summary>
    public static StartUpResult StartUp(string text) => StartUp(Read(text));

    /// <summary>The first seconds of a rig.</summary>
    public static StartUpResult StartUp(Rig rig, StartUpOptions? options = null) => RigSimulator.StartUp(rig, options, TestContext.Current.CancellationToken);
}
