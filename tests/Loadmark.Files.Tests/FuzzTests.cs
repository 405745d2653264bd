using System.Diagnostics;
using System.Text;

namespace Loadmark.Files.Tests;

/// <summary>Damaged files: whatever happens to one, it is answered, and errors point into it.</summary>
public sealed class FuzzTests
{
    private const int Inputs = 20_000;

    private static readonly string[] Pieces =
    [
        "[", "]", "{", "}", ":", ": ", "- ", "\n", "\r\n", "\t", "  ", "\"", "'", "#", " #", "&a", "*a", "!", "!!x ", "|\n", ">\n", "%", "@", "`", "?", "? ",
        ",", "---\n", "...\n", "~", "null", "\\", "\\u", "\0", "\uFEFF", "\u0085", "\u2028", "🎸", "\ud83d", "é", "9 V", "1e99", "-1", ".nan", "1-4", "4-1", "brick/", "wired:", "rig:", "<<: ",
    ];

    internal static void AssertGoodPlaces(string text, RigFileResult reading)
    {
        if (reading.Errors.IsEmpty)
            return;
        var lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', '\r');
        foreach (var error in reading.Errors)
        {
            Assert.InRange(error.Line, 1, lines.Length);
            Assert.InRange(error.Column, 1, lines[error.Line - 1].Length + 1);
            Assert.DoesNotContain('\n', error.ToString());
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Never_throws_and_never_hangs(int seed)
    {
        var random = new Random(seed);
        var slowest = TimeSpan.Zero;
        for (var i = 0; i < Inputs / 2; i++)
        {
            var text = Mutate(random, random.Next(4) == 0 ? Fixtures.Json : Fixtures.Pit);
            var watch = Stopwatch.StartNew();
            RigFileResult reading;
            try
            {
                reading = RigFileReader.Read(text, "fuzz");
            }
            catch (Exception fault)
            {
                throw new InvalidOperationException($"Input {i} of seed {seed} throws:\n{text}", fault);
            }

            slowest = watch.Elapsed > slowest ? watch.Elapsed : slowest;
            Assert.Equal(reading.Rig is null, reading.Errors.Length > 0);
            try
            {
                AssertGoodPlaces(text, reading);
            }
            catch (Exception fault)
            {
                throw new InvalidOperationException($"Input {i} of seed {seed} has a wrong place:\n{text}", fault);
            }
        }

        Assert.True(slowest < TimeSpan.FromSeconds(30), $"the slowest took {slowest}");
    }

    [Fact]
    public void Takes_any_bytes()
    {
        var random = new Random(3);
        var path = Path.GetTempFileName();
        try
        {
            for (var i = 0; i < 500; i++)
            {
                var bytes = new byte[random.Next(200)];
                random.NextBytes(bytes);
                if (i % 2 == 0)
                {
                    var good = Encoding.UTF8.GetBytes(Fixtures.Pit);
                    good[random.Next(good.Length)] = (byte)random.Next(256);
                    bytes = good;
                }

                File.WriteAllBytes(path, bytes);
                var reading = RigFileReader.ReadFileWithText(path).Reading;
                Assert.Equal(reading.Rig is null, reading.Errors.Length > 0);
            }
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static string Mutate(Random random, string text)
    {
        var result = new StringBuilder(text);
        for (var n = random.Next(1, 5); n > 0 && result.Length > 1; n--)
        {
            var at = random.Next(result.Length);
            var length = Math.Min(random.Next(1, 30), result.Length - at);
            switch (random.Next(5))
            {
                case 0:
                    result.Remove(at, length);
                    break;
                case 1:
                    result.Insert(at, Pieces[random.Next(Pieces.Length)]);
                    break;
                case 2:
                    result.Insert(random.Next(result.Length), result.ToString(at, length));
                    break;
                case 3:
                    result.Length = at + 1;
                    break;
                default:
                    result[at] = (char)random.Next(1, 0x2FF);
                    break;
            }
        }

        return result.ToString();
    }
}
