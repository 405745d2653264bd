using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Tests;

internal static class Rigs
{
    public static Rig Read(string text)
    {
        var reading = RigFileReader.Read(text, "test.rig.yaml");
        return reading.Rig ?? throw new InvalidOperationException(string.Join('\n', reading.Errors) + "\n" + text);
    }

    public static Rig Example(string path) => RigFileReader.ReadFileWithText(path).Reading.Rig ?? throw new InvalidOperationException(path);

    public static PlanResult Plan(string text, PlanOptions? options = null) =>
        RigPlanner.Plan(Read(text), options ?? new PlanOptions(), TestContext.Current.CancellationToken);
}
