using System.Diagnostics;
using System.Globalization;
using Loadmark.Circuits.Networks;
using Loadmark.Circuits.Spice;

namespace Loadmark.Circuits.Tests.Spice;

/// <summary>Runs decks through ngspice. A test that needs it fails where it is not installed.</summary>
internal static class NgSpice
{
    /// <summary>Tight tolerances, so that the difference measured is ours.</summary>
    private const string Options = ".options reltol=1e-9 abstol=1e-15 vntol=1e-12 gmin=1e-12 itl1=500 itl4=200";

    /// <summary>Voltages of all nodes at the operating point, by the netlist's names.</summary>
    public static Dictionary<string, double> OperatingPoint(Netlist netlist, IReadOnlyDictionary<string, double>? guess = null)
    {
        var deck = new SpiceDeck(netlist, isSteady: true);
        var nodes = Nodes(netlist);
        var nodeset = guess is null ? "" : $".nodeset {string.Join(' ', nodes.Select(node => $"v({deck.Node(node)})={guess[node]:R}"))}\n";
        var prints = string.Join('\n', nodes.Select(node => $"print v({deck.Node(node)})"));
        var output = RunDeck($"* operating point\n{deck.Text}{nodeset}{Options}\n.control\nset numdgt=15\nop\n{prints}\nquit\n.endc\n.end\n");
        var values = new Dictionary<string, double>();
        foreach (var line in output.Split('\n'))
        {
            var parts = line.Split(" = ");
            if (parts.Length == 2 && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
                values[parts[0].Trim()] = value;
        }

        return nodes.ToDictionary(node => node, node =>
            values.TryGetValue($"v({deck.Node(node)})", out var value) ? value : throw new InvalidOperationException($"ngspice gave no {node}:\n{output}"));
    }

    /// <summary>Times and voltages of some nodes in a transient from rest.</summary>
    public static (double[] Times, double[][] Voltages) Transient(Netlist netlist, double end, double longestStep, params string[] nodes)
    {
        var deck = new SpiceDeck(netlist, isSteady: false);
        var file = Path.GetTempFileName();
        try
        {
            var columns = string.Join(' ', nodes.Select(node => $"v({deck.Node(node)})"));
            var output = RunDeck(
                $"* transient\n{deck.Text}.options reltol=1e-6 abstol=1e-12 vntol=1e-9 method=trap itl4=200\n.control\nset numdgt=12\nset wr_singlescale\n"
                + $"tran {longestStep:R} {end:R} 0 {longestStep:R} uic\nwrdata {file} {columns}\nquit\n.endc\n.end\n");
            var rows = File.ReadLines(file)
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray())
                .ToArray();
            Assert.True(rows.Length > 2 && rows[^1][0] > 0.999 * end, $"ngspice stopped early:\n{output}\n{deck.Text}");
            return ([.. rows.Select(row => row[0])], [.. nodes.Select((_, index) => rows.Select(row => row[index + 1]).ToArray())]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    /// <summary>What ngspice prints for a deck.</summary>
    public static string RunDeck(string deck)
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, deck);
            using var process = Process.Start(new ProcessStartInfo("ngspice", ["-b", path]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })
                ?? throw new InvalidOperationException("ngspice did not start.");
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return output + errors.Result;
        }
        finally
        {
            File.Delete(path);
        }
    }

    public static string[] Nodes(Netlist netlist) =>
        [.. netlist.Devices.SelectMany(device => new[] { device.Plus, device.Minus }).Where(node => node != Netlist.Ground).Distinct()];
}
