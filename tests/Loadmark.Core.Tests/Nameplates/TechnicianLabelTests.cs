using System.Text;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>The label set that was written before the reader: how many are read right, and that nothing wrong is asserted.</summary>
public sealed class TechnicianLabelTests
{
    /// <summary>What the reader reaches: raised with it, never lowered.</summary>
    private const int LeastRight = 435;

    private const int MostWrong = 0;

    [Fact]
    public void Labels_read_as_a_technician_reads_them()
    {
        var report = new StringBuilder();
        var table = new StringBuilder("| group | labels | right | wrong assertions |\n| --- | --- | --- | --- |\n");
        var (right, wrong) = (0, 0);
        foreach (var group in TechnicianLabels.All.GroupBy(row => row.Group))
        {
            var (groupRight, groupWrong) = (0, 0);
            foreach (var (_, label, facts) in group)
            {
                var (missed, said, open) = TechnicianLabels.Compare(label, facts);
                groupRight += missed.Count + said.Count + open.Count == 0 ? 1 : 0;
                groupWrong += said.Count > 0 ? 1 : 0;
                if (missed.Count + said.Count + open.Count > 0)
                    report.AppendLine($"{label.ReplaceLineEndings("\\n")}\n    missed [{string.Join("; ", missed)}] wrong [{string.Join("; ", said)}] open [{string.Join("; ", open)}]");
            }

            table.AppendLine($"| {group.Key} | {group.Count()} | {groupRight} | {groupWrong} |");
            right += groupRight;
            wrong += groupWrong;
        }

        var count = TechnicianLabels.All.Count;
        table.AppendLine($"| all | {count} | {right} | {wrong} |");
        TestContext.Current.TestOutputHelper?.WriteLine($"{table}\n{report}");
        Assert.True(count >= 200);
        Assert.True(wrong <= MostWrong && right >= LeastRight, $"{table}\n{report}");
    }
}
