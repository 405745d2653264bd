using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Loadmark.Simulation.Tests.Spice;

/// <summary>Runs many decks in one process of ngspice, as starting it takes longer than a small circuit does. It must be installed.</summary>
internal sealed class NgSpiceBatch : IDisposable
{
    /// <summary>Tolerances of the steady state, so tight that the difference measured is ours.</summary>
    private const string Steady = ".options reltol=1e-9 abstol=1e-15 vntol=1e-12 gmin=1e-12 itl1=500";

    /// <summary>Tolerances of transients.</summary>
    private const string Starting = ".options reltol=1e-6 abstol=1e-12 vntol=1e-9 itl4=200 method=";

    /// <summary>Tolerances of transients with rectifiers, whose knees tighter ones do not get past; still far closer than what is asserted of them.</summary>
    private const string Rectifying = ".options reltol=1e-4 itl4=200 method=";

    /// <summary>How much of a processor a deck may take; most take a hundredth of this. How long that is depends on who else works.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>How long it may stand still altogether.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(2);

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-spice-").FullName;
    private readonly List<string> _decks = [];
    private readonly StringBuilder _output = new();
    private string? _read;
    private int _begun;

    /// <summary>Adds an operating point.</summary>
    /// <param name="elements">The element lines.</param>
    /// <param name="wanted">What is wanted, as v(node) or i(source) by the names in the deck.</param>
    /// <returns>Its number.</returns>
    public int AddOperatingPoint(string elements, IEnumerable<string> wanted)
    {
        Add($"{elements}{Steady}\n", "op", string.Concat(wanted.Select(static expression => $"print {expression}\n")));
        return _decks.Count - 1;
    }

    /// <summary>Adds a transient from rest.</summary>
    /// <param name="elements">The element lines.</param>
    /// <param name="end">How long, s.</param>
    /// <param name="longestStep">The longest step, s.</param>
    /// <param name="nodes">The nodes wanted, by their names in the deck.</param>
    /// <param name="isGear">Whether by Gear's method, which gets through more decks; else by the trapezoidal rule, which is closer for the same steps.</param>
    /// <param name="rectifies">Whether the deck has rectifiers.</param>
    /// <returns>Its number.</returns>
    public int AddTransient(string elements, double end, double longestStep, IEnumerable<string> nodes, bool isGear = false, bool rectifies = false)
    {
        Add(
            $"{elements}{(rectifies ? Rectifying : Starting)}{(isGear ? "gear" : "trap")}\n",
            FormattableString.Invariant($"tran {longestStep:R} {end:R} 0 {longestStep:R} uic"),
            $"wrdata {PathOf(_decks.Count)}.data {string.Join(' ', nodes.Select(static node => $"v({node})"))}\n");
        return _decks.Count - 1;
    }

    /// <summary>Runs those that have been added since it ran last. A transient that ngspice does not get through is left out, and the rest is run on.</summary>
    public void Run()
    {
        _read = null;
        for (var next = _begun; next < _decks.Count;)
        {
            var path = Path.Combine(_folder, "all.cir");
            File.WriteAllText(path, $"* many decks\n.control\nset numdgt=15\nset wr_singlescale\noptran 1 1 1 0 0 0\n{string.Concat(_decks.Skip(next))}quit\n.endc\n.end\n");
            using var process = Process.Start(new ProcessStartInfo("ngspice", ["-b", path]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })
                ?? throw new InvalidOperationException("ngspice did not start.");
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEndAsync();
            var last = next;
            var (spent, since) = (TimeSpan.Zero, Stopwatch.StartNew());
            while (!process.WaitForExit(Patience))
            {
                var reached = Reached(last);
                if (reached > last)
                {
                    (last, spent, since) = (reached, Spent(process), Stopwatch.StartNew());
                    continue;
                }

                if (Spent(process) - spent < Patience && since.Elapsed < Longest)
                    continue;

                process.Kill();
                process.WaitForExit();
                break;
            }

            _output.Append(output.Result).Append(errors.Result);
            next = process.ExitCode == 0 ? _decks.Count : Reached(last) + 1;
        }

        _begun = _decks.Count;
    }

    private static TimeSpan Spent(Process process)
    {
        try
        {
            return process.TotalProcessorTime;
        }
        catch (InvalidOperationException)
        {
            return TimeSpan.Zero; // it has ended meanwhile
        }
    }

    /// <summary>What was wanted of an operating point, V or A, by its expression; nothing where ngspice found none.</summary>
    public Dictionary<string, double> OperatingPoint(int number)
    {
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        _read ??= _output.ToString();
        var begin = _read.IndexOf($"deck {number} begins", StringComparison.Ordinal);
        var end = _read.IndexOf($"deck {number} ends", StringComparison.Ordinal);
        foreach (var line in begin < 0 || end < 0 ? [] : _read[begin..end].Split('\n'))
        {
            var parts = line.Split(" = ");
            if (parts.Length == 2 && (parts[0].StartsWith("v(", StringComparison.Ordinal) || parts[0].StartsWith("i(", StringComparison.Ordinal)) && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
                values[parts[0].Trim()] = value;
        }

        return values;
    }

    /// <summary>The times of a transient, s, and for each node the voltages then, V; nothing where ngspice gave nothing.</summary>
    public (double[] Times, double[][] Voltages) Transient(int number)
    {
        if (!File.Exists($"{PathOf(number)}.data"))
            return ([], []);
        var rows = File.ReadLines($"{PathOf(number)}.data")
            .Select(static line => Array.ConvertAll(line.Split(' ', StringSplitOptions.RemoveEmptyEntries), static cell => double.Parse(cell, CultureInfo.InvariantCulture)))
            .ToArray();
        return ([.. rows.Select(static row => row[0])], [.. Enumerable.Range(1, rows[0].Length - 1).Select(column => rows.Select(row => row[column]).ToArray())]);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private void Add(string deck, string analysis, string output)
    {
        File.WriteAllText($"{PathOf(_decks.Count)}.cir", $"* deck {_decks.Count}\n{deck}.end\n");
        _decks.Add($"source {PathOf(_decks.Count)}.cir\necho deck {_decks.Count} begins\n{analysis}\n{output}echo deck {_decks.Count} ends\ndestroy all\nremcirc\n");
    }

    /// <summary>The first deck from some number on that has written nothing yet.</summary>
    private int Reached(int from)
    {
        while (from < _decks.Count && File.Exists($"{PathOf(from)}.data"))
            from++;
        return from;
    }

    private string PathOf(int number) => Path.Combine(_folder, string.Create(CultureInfo.InvariantCulture, $"d{number}"));
}
