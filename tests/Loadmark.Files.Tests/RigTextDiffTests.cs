using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

/// <summary>Which lines change for an edit that a person makes, in files written by hand.</summary>
public sealed class RigTextDiffTests
{
    private static readonly Load Spare = new() { Id = "other-99", Kind = new LoadKind("analog drive"), Label = NameplateReader.Read("9V DC 12mA") };

    public static TheoryData<string, string, string> OutletEdits => new()
    {
        { "1-4: 9 V 150 mA # row", "2", "      1: 9 V 150 mA # row|      2: 12 V 1 A|      3-4: 9 V 150 mA" },
        { "1-4: 9 V 150 mA # row", "1", "      1: 12 V 1 A|      2-4: 9 V 150 mA # row" },
        { "1-4: 9 V 150 mA # row", "4", "      1-3: 9 V 150 mA # row|      4: 12 V 1 A" },
        { "1-4: 9 V 150 mA # row", "1,2,3,4", "      1-4: 12 V 1 A # row" },
        { "1-4: 9 V 150 mA # row", "2,3", "      1: 9 V 150 mA # row|      2-3: 12 V 1 A|      4: 9 V 150 mA" },
        { "1 – 2: 9 V # row\n      08-10: 9 V 150 mA", "09", "      1 – 2: 9 V # row|      08: 9 V 150 mA|      09: 12 V 1 A|      10: 9 V 150 mA" },
        { "1-4: 9 V 150 mA # row", "-2", "      1: 9 V 150 mA # row|      3-4: 9 V 150 mA" },
        { "1: 9 V\n      # below\n      2: 9 V # b", "-1", "      # below|      2: 9 V # b" },
        { "1: { label: 9 V, plug: 5.5x2.5 } # a", "1", "      1: { label: 12 V 1 A, plug: 5.5x2.5 } # a" },
        { "1: # a", "1", "      1: 12 V 1 A # a" },
    };

    public static TheoryData<string> Examples => new(Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.rig.yaml").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal));

    private static IEnumerable<(Func<Rig, Rig> Change, int Removed, int Added)> Edits =>
    [
        (rig => rig with { Name = "Another name" }, 1, 1),
        (rig => rig with { Mains = new RigMains(new Volts(120), new Frequency(60)) }, 1, 1),
        (rig => rig with { Headroom = 0.2m }, -1, 1),
        (rig => rig with { Loads = [.. rig.Loads, Spare] }, 0, 1),
        (rig => rig with { Loads = [rig.Loads[0], Spare, .. rig.Loads.Skip(1)] }, 0, 1),
        (rig => rig with { Loads = [Spare, .. rig.Loads] }, 0, 1),
        (rig => rig with { Loads = [.. rig.Loads.Select(load => load.Id == rig.Loads[0].Id ? load with { Label = NameplateReader.Read("9V 77mA") } : load)] }, 1, 1),
        (rig => rig with { Loads = [.. rig.Loads.Select(load => load with { StopsBelow = load.Id == rig.Loads[0].Id ? new Volts(6.5m) : load.StopsBelow })] }, 1, 1),
        (rig => rig with { Supplies = [.. rig.Supplies.Select((supply, index) => index == 0 ? supply with { Overload = OverloadWay.Fuse } : supply)] }, -1, 1),
        (rig => rig with { Signal = [.. rig.Signal, "loft"] }, -1, 1),
        (rig => rig with { Leads = [.. rig.Leads, new Lead { Id = "odd", Type = LeadType.Reversing }] }, 0, -1),
    ];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Edits_of_the_examples_touch_only_their_lines(string example)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", example));
        var rig = Fixtures.Read(text);
        var number = 0;
        foreach (var (change, removed, added) in Edits)
        {
            var changed = change(rig);
            var update = RigFileEditor.Update(text, changed);
            Assert.True(update.CommentsKept);
            Assert.Equal(changed, Fixtures.Read(update.Text));
            var (gone, come) = (Lines(text).Except(Lines(update.Text)).Count(), Lines(update.Text).Except(Lines(text)).Count());
            Assert.True(gone == removed || (removed < 0 && gone <= 1), $"{example}, edit {number}: {gone} lines gone\n{update.Text}");
            Assert.True(come == added || (added < 0 && come is 1 or 2), $"{example}, edit {number}: {come} lines new\n{update.Text}");
            Assert.Equal(text, RigFileEditor.Update(text, rig).Text);
            number++;
        }
    }

    [Theory]
    [MemberData(nameof(OutletEdits))]
    public void Parts_ranges_where_outlets_differ(string outlets, string changed, string expected)
    {
        var text = $"rig: r\nsupplies:\n  brick:\n    outlets:\n      {outlets}\n";
        var rig = Fixtures.Read(text);
        var supply = rig.Supplies[0];
        var without = changed.StartsWith('-');
        supply = supply with
        {
            Outlets = without
                ? [.. supply.Outlets.Where(outlet => outlet.Id != changed[1..])]
                : [.. supply.Outlets.Select(outlet => changed.Split(',').Contains(outlet.Id) ? outlet with { Label = NameplateReader.Read("12 V 1 A") } : outlet)],
        };
        var update = RigFileEditor.Update(text, rig with { Supplies = [supply] });
        Assert.Equal($"rig: r\nsupplies:\n  brick:\n    outlets:\n{expected.Replace('|', '\n')}\n", update.Text);
    }

    [Fact]
    public void Ranges_read_back_whatever_changes()
    {
        var outlets = Gen.Select(Gen.Int[1, 12].HashSet[1, 8], Gen.Int[0, 2].Array[12]);
        Check.Sample(
            Gen.Select(outlets, outlets, Gen.Bool),
            (before, after, isFlow) =>
            {
                var lines = OutletsOf(before.Item1.Order(), before.Item2, ranges: true);
                var text = isFlow
                    ? $"rig: r\nsupplies: {{ s: {{ outlets: {{ {string.Join(", ", lines)} }} }} }}\n"
                    : $"rig: r\nsupplies:\n  s:\n    outlets:\n      {string.Join("\n      ", lines.Select(line => $"# above\n      {line} # behind"))}\n";
                var rig = Fixtures.Read(text);
                var wanted = Fixtures.Read($"rig: r\nsupplies: {{ s: {{ outlets: {{ {string.Join(", ", OutletsOf(after.Item1, after.Item2, ranges: false))} }} }} }}\n");
                var update = RigFileEditor.Update(text, wanted);
                Assert.Equal(wanted, Fixtures.Read(update.Text));
                Assert.True(update.CommentsKept);
                Assert.Equal(text.Split("# above").Length, update.Text.Split("# above").Length);
            },
            iter: 500,
            threads: 2);
    }

    [Theory]
    [InlineData("rig: r\nloads:\n  # drives\n  A: {label: 9V} # a\n  B:\n    kind: digital # k\n    label: 9V # l\n  # last\nsignal: [A]\n", "B,A", "rig: r\nloads:\n  # drives\n  B:\n    kind: digital # k\n    label: 9V # l\n  A: {label: 9V} # a\n  # last\nsignal: [A]\n")]
    [InlineData("rig: r\nloads:\n  # drives\n  A: {label: 9V} # a\n  B: {} # b\n  # last", "", "rig: r\nloads:\n  # drives\n  # last")]
    [InlineData("rig: r\nloads: { A: {label: 9V}, B: {} } # c", "B", "rig: r\nloads: { B: {} } # c")]
    [InlineData("rig: r\nloads: {\n  A: {label: 9V}, # a\n  B: {} # b\n} # c", "A", "rig: r\nloads: {\n  A: {label: 9V}, # a\n   # b\n} # c")]
    [InlineData("{\"rig\": \"r\", \"loads\": {\"A\": {}, \"B\": {}}}", "A", "{\"rig\": \"r\", \"loads\": {\"A\": {}}}")]
    [InlineData("{\"rig\": \"r\", \"loads\": {\"A\": {}, \"B\": {}}}", "B,A", "{\"rig\": \"r\", \"loads\": {\"B\": {}, \"A\": {}}}")]
    public void Removes_and_moves_loads(string text, string order, string expected)
    {
        var rig = Fixtures.Read(text);
        var update = RigFileEditor.Update(text, rig with { Loads = [.. order.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(id => rig.Loads.Single(load => load.Id == id))] });
        Assert.Equal(new RigTextUpdate(expected, true), update);
    }

    [Fact]
    public void Renames_in_place_and_in_the_wiring()
    {
        var rig = Fixtures.Read(Fixtures.Pit);
        var renamed = rig with
        {
            Loads = [.. rig.Loads.Select(load => load.Id == "delay-2" ? load with { Id = "delay-77" } : load)],
            Wired = (ValueList<Feed>)[.. rig.Wired!.Value.Select(feed => feed.To[0] == "delay-2" ? feed with { To = ["delay-77"] } : feed)],
            Signal = [.. rig.Signal.Select(word => word == "delay-2" ? "delay-77" : word)],
        };
        Assert.Equal(new RigTextUpdate(Fixtures.Pit.Replace("delay-2", "delay-77", StringComparison.Ordinal), true), RigFileEditor.Update(Fixtures.Pit, renamed));
    }

    [Fact]
    public void Changes_only_the_feeds_that_differ()
    {
        var rig = Fixtures.Read(Fixtures.Pit);
        var wired = rig.Wired!.Value;
        var update = RigFileEditor.Update(Fixtures.Pit, rig with { Wired = (ValueList<Feed>)[wired[0], wired[2], wired[3] with { Pinned = true }] });
        var expected = Fixtures.Pit
            .Replace("  - { from: brick/5, at: 9 V, to: delay-2 }\n", "", StringComparison.Ordinal)
            .Replace("joined: series, to: preamp-2 }", "joined: series, to: preamp-2, pinned: true }", StringComparison.Ordinal);
        Assert.Equal(expected, update.Text);
    }

    [Theory]
    [InlineData("rig: r\n? loads\n: # c\n  A: {}\n", true)]
    [InlineData("rig: r\n? mains\n: 230 V # c\n", false)]
    [InlineData("rig: r\nloads:\n  ? A\n  : {}\n", true)]
    [InlineData("", false)]
    [InlineData("not: a rig", false)]
    public void Writes_anew_what_it_cannot_edit(string text, bool isKept)
    {
        var rig = new Rig { Name = "r", Loads = [Spare, Spare with { Id = "A" }] };
        var update = RigFileEditor.Update(text, rig);
        Assert.Equal(rig, Fixtures.Read(update.Text));
        Assert.Equal(isKept, update.CommentsKept);
    }

    [Fact]
    public void Refuses_a_rig_that_no_file_holds() =>
        Assert.Throws<ArgumentException>(() => RigFileEditor.Update(Fixtures.Pit, new Rig { Name = "r", Loads = [Spare, Spare] }));

    private static string[] Lines(string text) => text.Split('\n');

    private static List<string> OutletsOf(IEnumerable<int> ids, int[] labels, bool ranges)
    {
        var entries = new List<(int First, int Last)>();
        foreach (var id in ids)
        {
            if (ranges && entries.Count > 0 && entries[^1].Last == id - 1 && labels[id - 1] == labels[entries[^1].First - 1])
                entries[^1] = (entries[^1].First, id);
            else
                entries.Add((id, id));
        }

        return [.. entries.Select(entry => $"{(entry.First == entry.Last ? $"{entry.First}" : $"{entry.First}-{entry.Last}")}: {labels[entry.First - 1] switch { 0 => "9 V", 1 => "\"\"", _ => "{ label: 9 V, isolated: yes }" }}")];
    }
}
