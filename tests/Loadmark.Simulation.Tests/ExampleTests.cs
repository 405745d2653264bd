using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Tests;

/// <summary>Every example can be computed.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Names =>
        [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.rig.yaml").Select(static path => Path.GetFileName(path)[..^".rig.yaml".Length])];

    [Theory]
    [MemberData(nameof(Names))]
    public void Settles_and_starts(string name)
    {
        var rig = RigText.Example(name);
        var settled = RigText.Settle(rig);
        Assert.True(settled.IsFound);
        Assert.All(settled.Loads, load => Assert.True(load.State == LoadState.Off ? load.Because is not null : load.Volts is not null));
        Assert.True(RigText.StartUp(rig).IsComplete);
    }
}
