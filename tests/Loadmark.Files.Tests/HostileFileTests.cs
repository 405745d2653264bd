using System.Diagnostics;

namespace Loadmark.Files.Tests;

/// <summary>Texts made to exhaust a reader: each is answered, in time that does not depend on cunning.</summary>
public sealed class HostileFileTests
{
    /// <summary>Far above what any of these takes, far below what any took where time grew with a square.</summary>
    /// <summary>Far more than any of these takes on a busy machine, far less than anything quadratic would.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static readonly Dictionary<string, Func<string>> Texts = new(StringComparer.Ordinal)
    {
        ["brackets"] = () => new string('[', 500_000),
        ["braces"] = () => new string('{', 500_000),
        ["dashes"] = () => string.Concat(Enumerable.Repeat("- ", 500_000)),
        ["questions"] = () => string.Concat(Enumerable.Repeat("? ", 500_000)),
        ["both brackets"] = () => string.Concat(Enumerable.Repeat("[{a: ", 200_000)),
        ["nested under a key"] = () => "rig: r\nloads: " + new string('[', 500_000),
        ["a stair"] = () => string.Concat(Enumerable.Range(0, 1_400).Select(i => new string(' ', i) + "a:\n")),
        ["colons"] = () => new string(':', 1_000_000),
        ["quotes"] = () => "rig: " + new string('\'', 1_000_001),
        ["a long line"] = () => "rig: " + new string('x', 1_000_000),
        ["a long key"] = () => new string('x', 1_000_000) + ": 1",
        ["a long comment"] = () => "#" + new string('x', 1_000_000),
        ["many comments"] = () => string.Concat(Enumerable.Repeat("#\n", 500_000)),
        ["empty lines"] = () => "rig: \"a" + new string('\n', 1_000_000),
        ["spaces"] = () => "rig:" + new string(' ', 1_000_000) + "a",
        ["tabs"] = () => "rig:\n" + new string('\t', 1_000_000),
        ["a list on one line"] = () => "rig: r\nsignal: [" + string.Concat(Enumerable.Repeat("a,", 500_000)) + "]",
        ["many bad keys"] = () => "rig: r\nloads: { x: {" + string.Concat(Enumerable.Range(0, 100_000).Select(i => $"k{i}: 1,")) + "} }",
        ["the same key again and again"] = () => "rig: r\nloads: {" + string.Concat(Enumerable.Repeat("x: {},", 150_000)) + "}",
        ["many wrong references"] = () => "rig: r\nloads: {" + string.Concat(Enumerable.Range(0, 20_000).Select(i => $"load-{i:D6}: ,")) + "}\nwired:\n" + string.Concat(Enumerable.Range(0, 15_000).Select(i => $"- {{to: laod-{i:D6}}}\n")),
        ["ranges of a thousand"] = () => "rig: r\nsupplies: { a: { outlets: {" + string.Concat(Enumerable.Range(0, 1_000).Select(i => $"{(i * 1_000) + 1}-{(i + 1) * 1_000}: 9 V 1 A,")) + "} } }",
        ["aliases of aliases"] = () => "rig: r\na: &a [x, x]\n" + string.Concat(Enumerable.Range(0, 1_000).Select(i => $"a{i}: &a{i} [*a{(i == 0 ? "" : i - 1)}, *a{(i == 0 ? "" : i - 1)}]\n")),
        ["anchors"] = () => "rig: &" + new string('x', 1_000_000),
        ["tags"] = () => "rig: " + new string('!', 1_000_000),
        ["directives"] = () => string.Concat(Enumerable.Repeat("%X\n", 300_000)),
        ["documents"] = () => string.Concat(Enumerable.Repeat("---\n", 250_000)),
        ["digits"] = () => "rig: r\nloads: { x: { run: " + new string('9', 1_000_000) + " A, voltage: " + "9" + " } }",
    };

    public static TheoryData<string> Names => [.. Texts.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Answers_in_good_time(string what)
    {
        var text = Texts[what]();
        var watch = Stopwatch.StartNew();
        var reading = RigFileReader.Read(text, what);
        Assert.True(watch.Elapsed < Patience, $"{what}: {watch.Elapsed}");
        Assert.Equal(reading.Rig is null, reading.Errors.Length > 0);
        FuzzTests.AssertGoodPlaces(text, reading);
    }

    [Fact]
    public void Refuses_nesting_of_33_and_takes_32()
    {
        // The root and "signal" are the first two levels.
        var deep = "rig: r\nsignal: " + new string('[', 31) + new string(']', 31);
        Assert.DoesNotContain(RigFileReader.Read(deep, "f").Errors, error => error.Message.Contains("nested", StringComparison.Ordinal));
        deep = "rig: r\nsignal: " + new string('[', 32) + new string(']', 32);
        var error = Assert.Single(RigFileReader.Read(deep, "f").Errors);
        Assert.Equal((2, 9 + 31), (error.Line, error.Column));
        Assert.Contains("nested deeper than 32", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Takes_ten_thousand_loads()
    {
        var text = "rig: big\nsupplies:\n  b: { outlets: { 1-500: 9 V 500 mA } }\nloads:\n"
            + string.Concat(Enumerable.Range(0, 10_000).Select(i => $"  drive-{i}: {{ kind: analog drive, label: \"9V 12mA\", run: 10 mA }}\n"))
            + "wired:\n" + string.Concat(Enumerable.Range(0, 500).Select(i => $"  - {{ from: b/{i + 1}, to: [{string.Join(", ", Enumerable.Range(i * 20, 20).Select(j => $"drive-{j}"))}] }}\n"));
        Assert.True(text.Length < RigFileReader.MostBytes);
        var watch = Stopwatch.StartNew();
        var rig = Fixtures.Read(text);
        Assert.True(watch.Elapsed < Patience, $"{watch.Elapsed}");
        Assert.Equal(10_000, rig.Loads.Count);
        Assert.Equal(10_000, rig.Wired!.Value.Sum(feed => feed.To.Count));
    }
}
