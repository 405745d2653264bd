using System.Globalization;
using System.Text;

namespace Loadmark.Planning.Tests;

/// <summary>
/// Bin packing as wiring: items are loads, bins are alike outlets with a chain each. As many outlets as the optimum has
/// bins feed everything, and one outlet fewer does not. Instances and optima: see Data/binpacking/SOURCE.md.
/// </summary>
public sealed class BinPackingTests(ITestOutputHelper output)
{
    private const int MostItems = 10;

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Data", "binpacking");

    public static TheoryData<string, int> Instances()
    {
        var data = new TheoryData<string, int>();
        foreach (var line in File.ReadLines(Path.Combine(Folder, "optima.csv")).Skip(1))
        {
            var fields = line.Split(',');
            if (fields[0].StartsWith("pm/", StringComparison.Ordinal) && int.Parse(fields[3], CultureInfo.InvariantCulture) <= MostItems)
                data.Add(fields[0], int.Parse(fields[5], CultureInfo.InvariantCulture));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Instances))]
    public void The_fewest_outlets_are_the_fewest_bins(string file, int fewest)
    {
        var numbers = File.ReadLines(Path.Combine(Folder, file)).Select(line => int.Parse(line, CultureInfo.InvariantCulture)).ToArray();
        var (capacity, items) = (numbers[1], numbers[2..]);
        var limit = new PlanOptions { TimeLimit = TimeSpan.FromSeconds(60) };
        var enough = Rigs.Plan(RigOf(capacity, items, fewest), limit);
        var tooFew = Rigs.Plan(RigOf(capacity, items, fewest - 1), limit);
        output.WriteLine($"{file}: {items.Length} items; {fewest} outlets leave {enough.Unfed.Count}, {enough.Status}; {fewest - 1} leave {tooFew.Unfed.Count}, {tooFew.Status}");

        PlanAssert.IsSafe(enough);
        PlanAssert.IsSafe(tooFew);
        Assert.NotEmpty(tooFew.Unfed);
        Assert.NotEqual(PlanStatus.Infeasible, enough.Status);

        // What the time did not suffice to prove is listed above and claimed by nobody; these few are always proven.
        if (items.Length == 10)
        {
            Assert.Empty(enough.Unfed);
            Assert.Equal(PlanStatus.Infeasible, tooFew.Status);
        }

        static string RigOf(int most, int[] sizes, int outlets)
        {
            var text = new StringBuilder("rig: Bins\nheadroom: 0 %\nloads:\n");
            for (var item = 0; item < sizes.Length; item++)
                text.Append(CultureInfo.InvariantCulture, $"  I{item + 1}: {{ label: \"9 V DC {sizes[item]} mA\" }}\n");
            text.Append(CultureInfo.InvariantCulture, $"supplies:\n  bins:\n    label: \"INPUT 100-240V~ 50/60Hz\"\n    isolated: true\n    outlets: {{ 1-{outlets}: 9 V DC {most} mA }}\n");
            text.Append(CultureInfo.InvariantCulture, $"leads:\n  chain: {{ type: daisy chain, count: {outlets} }}\n");
            return text.ToString();
        }
    }
}
