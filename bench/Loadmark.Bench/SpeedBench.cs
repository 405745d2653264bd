using System.Diagnostics;
using System.Text.RegularExpressions;
using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Files;
using YamlDotNet.Core;

namespace Loadmark.Bench;

/// <summary>Times the parts in memory on one thread, each beside something plain that does less.</summary>
internal static partial class SpeedBench
{
    public static int Run()
    {
        var table = new ResultTable(
            "Speed in memory",
            $"One thread, Release, the median of nine rounds of at least 0.2 s each, turn by turn with the reference. {ResultTable.Machine}",
            "what", "per item", "items a second", "bytes allocated per item", "reference", "times the reference");

        var labels = SampleLabels.All;
        Compare(
            table, "read a label", labels.Length, () => { foreach (var label in labels) NameplateReader.Read(label); },
            "a regular expression that finds volts and amps only", () => { foreach (var label in labels) VoltsAndAmps().Count(label); });

        var twenty = SampleRig.OfLoads(20);
        Compare(
            table, "check a rig of 20 loads", 1, () => NameplateCheck.Of(twenty),
            "look everything up and join the figures, no rules", () => Core.Ratings.WiredRig.Of(twenty));

        foreach (var name in new[] { "pit", "festival" })
        {
            var text = File.ReadAllText($"examples/{name}.rig.yaml");
            Compare(
                table, $"read {name}.rig.yaml", 1, () => RigFileReader.Read(text, name),
                "the YAML library's events alone", () => Events(text));
        }

        foreach (var size in new[] { 100, 1_000, 10_000 })
        {
            var rig = SampleRig.OfLoads(size);
            Compare(
                table, $"check a rig of {size} loads, per load", size, () => NameplateCheck.Of(rig),
                "look everything up and join the figures, no rules", () => Core.Ratings.WiredRig.Of(rig));
        }

        table.Write("speed.md");
        return 0;
    }

    private static void Compare(ResultTable table, string what, int items, Action action, string reference, Action referenceAction)
    {
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var round = -2; round < 9; round++)
        {
            var (one, other) = (Time(action), Time(referenceAction));
            if (round < 0)
                continue;
            ours.Add(one);
            theirs.Add(other);
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        action();
        var bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / items;

        var (mine, its) = (Median(ours), Median(theirs));
        table.Add(what, $"{mine / items * 1e6:F2} µs", $"{items / mine:N0}", $"{bytes:N0}", reference, $"{mine / its:F2}");
    }

    private static double Time(Action action)
    {
        var count = 0;
        var clock = Stopwatch.StartNew();
        do
        {
            action();
            count++;
        }
        while (clock.Elapsed.TotalSeconds < 0.2);

        return clock.Elapsed.TotalSeconds / count;
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static int Events(string text)
    {
        var parser = new Parser(new StringReader(text));
        var count = 0;
        while (parser.MoveNext())
            count++;
        return count;
    }

    [GeneratedRegex(@"(?<number>[0-9]+(?:[.,][0-9]+)?)\s*(?<unit>mA|A|V)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex VoltsAndAmps();
}
