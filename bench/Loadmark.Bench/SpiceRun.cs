using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;

namespace Loadmark.Bench;

/// <summary>A transient by ngspice: what it computed, and how long it says that it took.</summary>
/// <param name="Times">Its time points, s.</param>
/// <param name="Voltages">For each node asked for, the voltages at these times.</param>
/// <param name="Seconds">The analysis time that ngspice reports, s.</param>
internal sealed partial record SpiceRun(double[] Times, double[][] Voltages, double Seconds)
{
    public static SpiceRun Transient(Netlist netlist, double end, string options, double longestStep, string[] nodes)
    {
        var deck = new SpiceDeck(netlist, isSteady: false);
        var (source, data) = (Path.GetTempFileName(), Path.GetTempFileName());
        try
        {
            var columns = string.Join(' ', nodes.Select(node => $"v({deck.Node(node)})"));
            File.WriteAllText(
                source,
                $"* start-up\n{deck.Text}.options {options}\n.save {columns}\n.control\nset numdgt=12\nset wr_singlescale\n"
                + $"tran {longestStep:R} {end:R} 0 {longestStep:R} uic\nrusage all\nwrdata {data} {columns}\nquit\n.endc\n.end\n");
            using var process = Process.Start(new ProcessStartInfo("ngspice", ["-b", source]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })
                ?? throw new InvalidOperationException("ngspice did not start.");
            var errors = process.StandardError.ReadToEndAsync();
            var talk = process.StandardOutput.ReadToEndAsync();
            if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
            {
                process.Kill();
                throw new InvalidOperationException("ngspice was stopped after two minutes.");
            }

            var output = talk.Result + errors.Result;
            var seconds = AnalysisTime().Match(output);
            var rows = File.ReadLines(data).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray()).ToArray();
            if (!seconds.Success || rows.Length == 0 || rows[^1][0] < 0.999 * end)
                throw new InvalidOperationException($"ngspice stopped early:\n{output}");
            return new SpiceRun(
                [.. rows.Select(row => row[0])], [.. nodes.Select((_, index) => rows.Select(row => row[index + 1]).ToArray())],
                double.Parse(seconds.Groups["seconds"].Value, CultureInfo.InvariantCulture));
        }
        finally
        {
            File.Delete(source);
            File.Delete(data);
        }
    }

    /// <summary>The voltage of a node between points, by straight lines, V.</summary>
    public double At(int node, double seconds)
    {
        var after = Array.BinarySearch(Times, seconds);
        if (after < 0)
            after = ~after;
        if (after == 0 || after >= Times.Length)
            return Voltages[node][Math.Min(after, Times.Length - 1)];
        var share = (seconds - Times[after - 1]) / (Times[after] - Times[after - 1]);
        return Voltages[node][after - 1] + (share * (Voltages[node][after] - Voltages[node][after - 1]));
    }

    [GeneratedRegex(@"Total analysis time \(seconds\) = (?<seconds>[0-9.]{1,20})", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AnalysisTime();
}
