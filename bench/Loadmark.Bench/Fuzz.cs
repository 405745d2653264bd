using System.Diagnostics;
using Loadmark.Core.Checks;
using Loadmark.Core.Nameplates;
using Loadmark.Files;

namespace Loadmark.Bench;

/// <summary>
/// Throws damaged input at the two readers: every input is answered, none throws, none takes long. The seed is fixed, so
/// a failure can be run again.
/// </summary>
internal static class Fuzz
{
    private const int Seed = 20_261_125;

    public static int Run(int count)
    {
        var table = new ResultTable(
            "Fuzzing",
            $"Seed {Seed}, {count:N0} inputs for each reader: real labels and rig files cut, spliced, repeated, with bytes exchanged and "
            + "characters of many scripts put in, and plain noise. Every rig that could be read was also checked by all rules.",
            "reader", "inputs", "with something read", "exceptions", "slowest input", "seconds");

        var failed = Labels(table, count) + Rigs(table, count);
        table.Write("fuzz.md");
        return failed == 0 ? 0 : 1;
    }

    private static int Labels(ResultTable table, int count)
    {
        var random = new Random(Seed);
        var mutator = new Mutator(random, SampleLabels.All);
        return Drive(table, "labels", count, () => mutator.Next(), text =>
        {
            var nameplate = NameplateReader.Read(text);
            foreach (var piece in nameplate.Unread)
            {
                if (!piece.Place.In(text).SequenceEqual(piece.Text))
                    throw new InvalidOperationException("An unread piece is not where it says.");
            }

            return !nameplate.Modes.IsEmpty || nameplate.Mains is not null;
        });
    }

    private static int Rigs(ResultTable table, int count)
    {
        var random = new Random(Seed);
        var sources = Directory.GetFiles("examples", "*.rig.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText)
            .Where(text => text.Length < 3_000).ToArray();
        var mutator = new Mutator(random, sources);
        return Drive(table, "rig files", count, () => mutator.Next(), text =>
        {
            var reading = RigFileReader.Read(text, "fuzz");
            if (reading.Rig is null && reading.Errors.IsEmpty)
                throw new InvalidOperationException("Refused without a reason.");
            if (reading.Rig is { } rig)
                NameplateCheck.Of(rig);
            return reading.Rig is not null;
        });
    }

    private static int Drive(ResultTable table, string reader, int count, Func<string> next, Func<string, bool> read)
    {
        var (understood, failures, slowest) = (0, 0, 0.0);
        var clock = Stopwatch.StartNew();
        for (var index = 0; index < count; index++)
        {
            var text = next();
            var started = clock.Elapsed.TotalMilliseconds;
            try
            {
                if (read(text))
                    understood++;
            }
            catch (Exception exception)
            {
                // A fuzzer's whole purpose is to see whatever comes.
                failures++;
                if (failures <= 5)
                    Console.Error.WriteLine($"input {index}: {exception.GetType().Name}: {exception.Message}\n{text}\n{exception.StackTrace}");
            }

            slowest = Math.Max(slowest, clock.Elapsed.TotalMilliseconds - started);
        }

        table.Add(reader, $"{count:N0}", $"{understood:N0}", $"{failures}", $"{slowest:F1} ms", $"{clock.Elapsed.TotalSeconds:F0}");
        return failures;
    }
}
