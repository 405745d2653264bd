using System.Diagnostics;
using System.Globalization;

namespace Loadmark.Bench;

/// <summary>
/// Times every command that answers about a rig against the rig's size, as whole processes with a cap: what grows faster than the rig shows
/// as an exponent over 1.
/// </summary>
internal static class SizesBench
{
    /// <summary>What the exponent between two sizes should stay under, and what is marked where it does not.</summary>
    private const double Linear = 1.3;

    /// <summary>The exit code of an input that is not taken, as one over a limit of the format.</summary>
    private const int Refused = 2;

    private static readonly int[] Loads = [10, 100, 1_000, 10_000];
    private static readonly int[] Asked = [1, 10, 100, 1_000];
    private static readonly int[] Seconds = [1, 10, 100, 600];
    private static readonly int[] Starts = [1, 10, 100];
    private static readonly int[] Offers = [10, 100, 1_000];
    private static readonly int[] Characters = [1_000, 10_000, 100_000, 1_000_000];

    /// <summary>Measures and writes the table.</summary>
    /// <param name="cap">What a run may take, s, over 0; a run that takes more is ended and told as such.</param>
    public static int Run(int cap)
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-sizes-").FullName;
        try
        {
            var idle = Time(["read", "9V DC"], cap)!.Value;
            var table = new ResultTable(
                "Sizes",
                $"Whole processes (framework-dependent, not compiled ahead), seconds of the one run; a run is ended after {cap} s. The exponent "
                + $"is log(time ratio) / log(size ratio) between the last two sizes that came to their end, above the {idle:F1} s of a run that "
                + $"does nothing; over {Linear} it is bold. {ResultTable.Machine}",
                "what", "shape", "smallest", "second", "third", "fourth", "exponent");
            foreach (var (shape, write) in Shapes())
            {
                var files = Array.ConvertAll(Loads, size => Write(folder, $"{shape}-{size}", write(size)));
                foreach (var command in (ReadOnlySpan<string>)["check", "check --json", "settle", "startup", "netlist", "plan"])
                    Row(table, command, $"{shape} of 10 … 10,000 loads", Loads, Array.ConvertAll(files, file => (string[])[.. command.Split(' '), file]), idle, cap);
            }

            Rest(table, folder, idle, cap);

            foreach (var (shape, write) in Lines())
            {
                var files = Array.ConvertAll(Characters, size => Write(folder, $"{shape}-{size}", write(size)));
                Row(table, "check", $"{shape} of 1 KB … 1 MB", Characters, Array.ConvertAll(files, file => (string[])["check", file]), idle, cap);
            }

            foreach (var (shape, write) in Labels())
                Row(
                    table, "read", $"{shape} of 100 B … 100 KB", Characters,
                    Array.ConvertAll(Characters, size => (string[])["read", write(size / 10)]), idle, cap);
            Row(
                table, "ask", "1 … 1,000 loads", Asked,
                Array.ConvertAll(Asked, size => (string[])["ask", .. Enumerable.Repeat("9V DC 10mA", size)]), idle, cap);
            table.Write("sizes.md");
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Starts that never end, price lists, and gear.</summary>
    private static void Rest(ResultTable table, string folder, double idle, int cap)
    {
        foreach (var command in (ReadOnlySpan<string>)["check", "startup"])
        {
            Row(
                table, command, "a start that never ends, of 1, 10, 100 and 600 s", Seconds,
                Array.ConvertAll(Seconds, seconds => (string[])[command, Write(folder, $"seconds-{seconds}", NeverUp(1, seconds))]), idle, cap);
            Row(
                table, command, "1 … 100 starts of 600 s that never end", Starts,
                Array.ConvertAll(Starts, loads => (string[])[command, Write(folder, $"starts-{loads}", NeverUp(loads, 600))]), idle, cap);
        }

        const string wanting = "examples/to-buy.rig.yaml";
        Row(
            table, "buy", "8 loads from a price list of 10 … 1,000 supplies", Offers,
            Array.ConvertAll(Offers, offers => (string[])["buy", wanting, "--prices", WriteTable(folder, $"{offers}.prices.csv", SeededPriceList.Text(1, offers))]),
            idle, cap);
        var gear = Array.ConvertAll(
            Loads, pieces => WriteTable(folder, $"{pieces}.csv", "tag,label\n" + string.Concat(Names(pieces).Select(static name => $"{name},9V DC 10mA\n"))));
        var data = Array.ConvertAll(Loads, pieces => Path.Combine(folder, $"data-{pieces}"));
        Row(table, "gear import", "a table of 10 … 10,000 loads", Loads, [.. gear.Zip(data, static (file, kept) => (string[])["gear", "import", file, "--data", kept])], idle, cap);
        Row(table, "gear list", "of 10 … 10,000 pieces", Loads, Array.ConvertAll(data, static kept => (string[])["gear", "list", "--data", kept]), idle, cap);
    }

    /// <summary>Loads whose supplies give up each time they start: the longer a start, the longer they are looked at.</summary>
    private static string NeverUp(int loads, int seconds) =>
        "rig: A rig that never comes up\nmains: 230 V 50 Hz\nloads:\n"
        + string.Concat(Names(loads).Select(name =>
            $"  {name}: {{ kind: large digital, label: 9V DC 500mA centre negative, run: 380 mA, start: 1.1 A for {seconds} s }}\n"))
        + "supplies:\n" + string.Concat(Enumerable.Range(1, loads).Select(static load =>
            $"  wall-{load}: {{ label: OUTPUT 9V 1A centre negative, outlets: {{ 1: \"\" }}, overload: hiccup }}\n"))
        + "wired:\n" + string.Concat(Enumerable.Range(1, loads).Select(static load => $"  - {{ from: wall-{load}/1, to: load-{load} }}\n"));

    private static string WriteTable(string folder, string name, string text)
    {
        var path = Path.Combine(folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static IEnumerable<(string Shape, Func<int, string> Write)> Shapes()
    {
        yield return ("one chain", static loads => Rig(
            loads, $"  wall: {{ outlets: {{ 1: 9 V {Math.Max(1, loads / 50)} A }} }}\n",
            $"leads:\n  chain: {{ type: daisy chain, plugs: {loads}, tail: 0.5 m, pitch: 0.05 m }}\n",
            [$"{{ from: wall/1, lead: chain, to: [{string.Join(", ", Names(loads))}] }}"]));
        yield return ("star", static loads => Rig(
            loads, $"  brick: {{ isolated: true, outlets: {{ 1-{loads}: 9 V 100 mA }} }}\n", "",
            Enumerable.Range(1, loads).Select(static load => $"{{ from: brick/{load}, to: load-{load} }}")));
        yield return ("many supplies", static loads => Rig(
            loads, string.Concat(Enumerable.Range(1, loads).Select(static load => $"  wall-{load}: \"OUTPUT 9V 100mA centre negative\"\n")), "",
            Enumerable.Range(1, loads).Select(static load => $"{{ from: wall-{load}/1, to: load-{load} }}")));
    }

    private static IEnumerable<(string Shape, Func<int, string> Write)> Lines()
    {
        yield return ("a label", static size => $"rig: x\nloads:\n  a: \"{Repeat("9V DC 10mA ", size)}\"\n");
        yield return ("a name in one word", static size => $"rig: {new string('a', size)}\n");
        yield return ("a comment", static size => $"rig: x\n# {new string('a', size)}\n");
        yield return ("lists in lists", static size => $"rig: x\nloads: {new string('[', size / 2)}{new string(']', size / 2)}\n");
        yield return (
            "modes of an outlet", static size => $"rig: x\nsupplies:\n  s: {{ outlets: {{ 1: \"{Repeat("9 V 1 A; ", size)}\" }} }}\n");
        yield return (
            "leads", static size => "rig: x\nleads:\n"
                + string.Concat(Enumerable.Range(0, Math.Max(1, size / 40)).Select(static lead => $"  lead-{lead}: {{ type: straight, length: 1 m }}\n")));
    }

    private static IEnumerable<(string Shape, Func<int, string> Write)> Labels()
    {
        yield return ("figures", static size => Repeat("9V 100mA ", size));
        yield return ("words", static size => Repeat("abc ", size));
        yield return ("digits", static size => new string('9', size));
    }

    private static string Rig(int loads, string supplies, string leads, IEnumerable<string> feeds) =>
        "rig: A rig of one size\nmains: 230 V 50 Hz\nloads:\n" + string.Concat(Names(loads).Select(static name => $"  {name}: 9V DC 10mA\n"))
        + "supplies:\n" + supplies + leads + "wired:\n" + string.Concat(feeds.Select(static feed => $"  - {feed}\n"));

    private static IEnumerable<string> Names(int loads) => Enumerable.Range(1, loads).Select(static load => $"load-{load}");

    private static string Repeat(string text, int size) => string.Concat(Enumerable.Repeat(text, (size / text.Length) + 1))[..size];

    private static string Write(string folder, string name, string text)
    {
        var path = Path.Combine(folder, $"{name.Replace(' ', '-')}.rig.yaml");
        File.WriteAllText(path, text);
        return path;
    }

    private static void Row(ResultTable table, string what, string shape, int[] sizes, string[][] runs, double idle, int cap)
    {
        var times = new double?[runs.Length];

        // What did not come to its end at one size does not at the next.
        for (var run = 0; run < runs.Length && (run == 0 || times[run - 1] is not null); run++)
            times[run] = Time(runs[run], cap);
        var ended = Array.FindLastIndex(times, static time => time is > 0);
        var exponent = ended > 0
            ? Math.Log(Math.Max(0.1, times[ended]!.Value - idle) / Math.Max(0.1, times[ended - 1]!.Value - idle), (double)sizes[ended] / sizes[ended - 1])
            : double.NaN;
        var told = double.IsNaN(exponent) ? "" : exponent.ToString("F2", CultureInfo.InvariantCulture);
        table.Add(
            [what, shape, .. times.Select((time, run) => time switch
            {
                null when run > 0 && times[run - 1] is null => "",
                null => $"over {cap}",
                0 => "refused",
                { } seconds => $"{seconds:F1}",
            }), exponent > Linear ? $"**{told}**" : told]);
        Console.Error.WriteLine($"{what}, {shape}: {string.Join(' ', times)}");
    }

    /// <summary>How long a run takes, s; null where it did not come to its end, 0 where what was asked is refused as too large.</summary>
    private static double? Time(string[] arguments, int cap)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "loadmark.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        process.OutputDataReceived += static (_, _) => { };
        process.ErrorDataReceived += static (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        if (process.WaitForExit(TimeSpan.FromSeconds(cap)))
            return process.ExitCode == Refused ? 0 : clock.Elapsed.TotalSeconds;
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
        return null;
    }
}
