using System.Text;
using Loadmark.Fuzz;

// bench/fuzz HARNESS SECONDS does all of it:
// Loadmark.Fuzz seeds HARNESS FOLDER    what a fuzzer begins with, and its words
// Loadmark.Fuzz run HARNESS             takes input after input from afl-fuzz
// Loadmark.Fuzz take HARNESS FILE...    takes files, one after the other, as a fault is looked at
// Loadmark.Fuzz report HARNESS FILE     what a fuzzer counted, into bench/results/fuzzing.md
switch (args)
{
    case ["seeds", var name, var folder] when Harness.All.TryGetValue(name, out var make):
        using (var harness = make())
        {
            Directory.CreateDirectory(folder);
            foreach (var (seed, content) in harness.Seeds())
                File.WriteAllBytes(Path.Combine(folder, seed), content);
            File.WriteAllLines(folder.TrimEnd('/') + ".words", harness.Words.Select((word, place) => $"word{place}=\"{Escape(word)}\""));
        }

        return 0;
    case ["run", var name] when Harness.All.TryGetValue(name, out var make):
        // What is instrumented can only run once the fuzzer is connected, so the harness is made for the first input.
        Harness? running = null;
        SharpFuzz.Fuzzer.Run(stream =>
        {
            using var input = new MemoryStream();
            stream.CopyTo(input);
            (running ??= make()).Take(input.ToArray());
        });
        running?.Dispose();
        return 0;
    case ["take", var name, .. var files] when Harness.All.TryGetValue(name, out var make):
        using (var harness = make())
        {
            foreach (var file in files)
                harness.Take(File.ReadAllBytes(file));
        }

        return 0;
    case ["report", var name, var file] when Harness.All.ContainsKey(name):
        FuzzingTable.Renew(name, File.ReadAllLines(file));
        return 0;
    default:
        Console.Error.WriteLine($"usage: seeds HARNESS FOLDER | run HARNESS | take HARNESS FILE... | report HARNESS FILE; HARNESS is one of {string.Join(", ", Harness.All.Keys)}");
        return 2;
}

static string Escape(string word) => string.Concat(Encoding.UTF8.GetBytes(word).Select(static letter =>
    letter is >= 0x20 and < 0x7f and not ((byte)'"' or (byte)'\\') ? ((char)letter).ToString() : $"\\x{letter:x2}"));
