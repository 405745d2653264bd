using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Parsing;

namespace Loadmark.Files.Tests;

/// <summary>Rig files that take gear from a library.</summary>
public sealed class FromLibraryTests
{
    private static readonly Load Delay = Fixtures.Read("rig: a\nloads: { delay-2: { name: Delay with the long tail, kind: digital, label: 9V 300mA, run: 210 mA, isolate: true, priority: 1 } }").Loads[0];

    private static readonly Supply Brick = Fixtures.Read("rig: a\nsupplies: { brick: { isolated: true, total: 18 W, outlets: { 1-4: 9 V 150 mA, 5: { label: 9 V 500 mA, bank: left } }, banks: { left: 1 A } } }").Supplies[0];

    private static readonly Shelf Library = new([Delay], [Brick]);

    [Fact]
    public void What_stands_beside_it_wins_and_an_empty_value_says_that_there_is_none()
    {
        var rig = Read("""
            rig: a
            loads:
              delay-2: { from: library }
            supplies:
              brick: { from: library, isolated: no }
            """);
        Assert.Equal(Delay with { FromLibrary = Delay }, rig.Loads[0]);
        Assert.Equal(Brick with { FromLibrary = Brick, Isolated = false }, rig.Supplies[0]);

        var own = Read("rig: a\nloads: { DELAY-2: { from: Library, run: 230 mA, kind: , isolate: no, priority: null } }").Loads[0];
        Assert.Equal(Delay with { Id = "DELAY-2", FromLibrary = Delay, Run = new Amps(0.23m), Kind = null, Isolate = false, Priority = null }, own);
    }

    [Theory]
    [InlineData("loads: { delay-20: { from: library } }", "2:28", "the gear library has no load with the tag 'delay-20'; did you mean 'delay-2'?")]
    [InlineData("loads: { brick: { from: library } }", "2:25", "the gear library has no load with the tag 'brick'; add it there, or write its figures in this file")]
    [InlineData("supplies: { brock: { from: library } }", "2:28", "the gear library has no supply with the tag 'brock'; did you mean 'brick'?")]
    [InlineData("supplies: { brick: { } }", "2:20", "a supply needs the key 'outlets' where no 'from' or 'label' says it: its outlets: an id, or a range of ids such as 1-4, with what is printed there")]
    [InlineData("loads: { delay-2: { from: shelf } }", "2:27", "from: expected one of library, found \"shelf\"")]
    [InlineData("supplies: { brick: { from: library, banks: { right: 1 A } } }", "2:46", "no outlet of this supply names the bank 'right'; give those outlets the key 'bank'")]
    public void What_cannot_be_taken_is_told_with_its_place(string rest, string place, string message)
    {
        var error = Assert.Single(RigFileReader.Read($"rig: a\n{rest}", "a", Library).Errors);
        Assert.Equal($"a:{place}: {message}", $"{error}");
    }

    [Fact]
    public void Without_a_library_that_is_told()
    {
        var error = Assert.Single(RigFileReader.Read("rig: a\nloads:\n  delay-2:\n    from: library\n", "a").Errors);
        Assert.Equal("a:4:11: there is no gear library here to take 'delay-2' from; write its figures in this file instead", $"{error}");
    }

    [Theory]
    [InlineData("  delay-2: { from: library }   # tail\n", "  delay-2: { from: library, run: 250 mA }   # tail\n")]
    [InlineData("  delay-2: { run: 230 mA, from: library }   # tail\n", "  delay-2: { run: 250 mA, from: library }   # tail\n")]
    [InlineData("  delay-2:\n    from: library   # tail\n    # more\n", "  delay-2:\n    from: library   # tail\n    run: 250 mA\n    # more\n")]
    public void An_edit_touches_only_what_is_the_rig_s_own(string load, string expected)
    {
        var (text, wanted) = ($"rig: a\nloads:\n{load}", $"rig: a\nloads:\n{expected}");
        var rig = Read(text);
        var update = RigFileEditor.Update(text, rig with { Loads = [rig.Loads[0] with { Run = new Amps(0.25m) }] });
        Assert.Equal((wanted, true), (update.Text, update.CommentsKept));

        // Back to what the library says: nothing of the rig's own is left.
        update = RigFileEditor.Update(update.Text, rig with { Loads = [rig.Loads[0] with { Run = Delay.Run }] });
        Assert.Equal(Delay with { FromLibrary = Delay }, Read(update.Text).Loads[0]);
        Assert.DoesNotContain("mA", update.Text, StringComparison.Ordinal);
        Assert.Contains("# tail", update.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_taken_away_is_written_as_nothing()
    {
        const string Text = "rig: a\nloads:\n  delay-2: { from: library }\n";
        var rig = Read(Text);
        var without = rig with { Loads = [rig.Loads[0] with { Run = null, Isolate = false }] };
        Assert.Equal("rig: a\nloads:\n  delay-2: { from: library, run: null, isolate: null }\n", RigFileEditor.Update(Text, without).Text);
        Assert.Equal(without, Read(RigFileWriter.Write(without)));
        const string Json = "{ \"rig\": \"a\", \"loads\": { \"delay-2\": { \"from\": \"library\" } } }";
        Assert.Equal("{ \"rig\": \"a\", \"loads\": { \"delay-2\": { \"from\": \"library\", \"run\": null, \"isolate\": null } } }", RigFileEditor.Update(Json, without).Text);
    }

    [Fact]
    public void A_load_with_another_tag_is_written_out()
    {
        const string Text = "rig: a\nloads:\n  delay-2: { from: library } # tail\n";
        var rig = Read(Text);
        var update = RigFileEditor.Update(Text, rig with { Loads = [rig.Loads[0] with { Id = "delay-3" }] });
        Assert.Equal(Delay with { Id = "delay-3" }, RigFileReader.Read(update.Text, "a").Rig!.Loads[0]);
    }

    [Fact]
    public void A_text_that_stands_alone_keeps_its_comments()
    {
        const string Text = "# for Saturday\nrig: a\nloads:\n  delay-2: { from: library, run: 230 mA }   # tail\nsupplies:\n  brick: { from: library }\nwired: [{ from: brick/5, to: delay-2 }]\n";
        var (update, errors) = RigFileEditor.WriteOut(Text, Library);
        Assert.Empty(errors);
        Assert.DoesNotContain("library", update!.Text, StringComparison.Ordinal);
        Assert.StartsWith("# for Saturday\n", update.Text, StringComparison.Ordinal);
        Assert.Contains("# tail", update.Text, StringComparison.Ordinal);
        Assert.Equal(Read(Text).WithoutLibrary(), RigFileReader.Read(update.Text, "a").Rig);

        const string Plain = "rig: a # mine\nloads: { drive-3: { run: 12 mA } }";
        Assert.Equal(Plain, RigFileEditor.WriteOut(Plain, Library).Update!.Text);
        Assert.NotEmpty(RigFileEditor.WriteOut("rig: a\nloads: { X: { from: library } }", Library).Errors);
    }

    [Fact]
    public void A_new_wiring_keeps_what_is_taken() =>
        Assert.Equal(
            "rig: a\nloads: { delay-2: { from: library } }\nsupplies: { brick: { from: library } }\n\nwired:\n  - {from: brick/5, to: delay-2}\n",
            RigFileEditor.ReplaceWiring("rig: a\nloads: { delay-2: { from: library } }\nsupplies: { brick: { from: library } }\n", [new Feed { From = [new OutletRef("brick", "5")], To = ["delay-2"] }], Library));

    /// <summary>Any rig, of which some is in the library otherwise than in the rig, written and edited, reads back as itself.</summary>
    [Fact]
    public void Any_rig_reads_back_as_itself_with_the_same_library() =>
        Gen.Select(RigChange.Pairs, RigGen.Rigs, Gen.Int[0, 255], Gen.Int[0, 255]).Sample((pair, donor, loads, supplies) =>
        {
            var library = Shelf.Of(pair.Before, pair.After, donor);
            var (before, after) = (library.In(pair.Before, loads, supplies), library.In(pair.After, loads, supplies));
            var text = RigFileWriter.Write(before);
            Assert.Equal(before, RigFileReader.Read(text, "a", library).Rig);
            Assert.Equal(after, RigFileReader.Read(RigFileEditor.Update(text, after).Text, "a", library).Rig);
            var alone = RigFileEditor.WriteOut(text, library).Update!.Text;
            Assert.Equal(before.WithoutLibrary(), RigFileReader.Read(alone, "a").Rig);
        }, iter: Rounds.Of(400));

    private static Rig Read(string text)
    {
        var reading = RigFileReader.Read(text, "a", Library);
        Assert.Empty(reading.Errors);
        return reading.Rig!;
    }

    private sealed class Shelf(IEnumerable<Load> loads, IEnumerable<Supply> supplies) : IGearLookup
    {
        private readonly Dictionary<string, Load> _loads = loads.DistinctBy(load => GearTag.KeyOf(load.Id)).ToDictionary(load => GearTag.KeyOf(load.Id));
        private readonly Dictionary<string, Supply> _supplies = supplies.DistinctBy(supply => GearTag.KeyOf(supply.Id)).ToDictionary(supply => GearTag.KeyOf(supply.Id));

        /// <summary>A library in which everything of two rigs has the figures of something of a third.</summary>
        public static Shelf Of(Rig before, Rig after, Rig donor) => new(
            before.Loads.Concat(after.Loads).Select((load, at) => (donor.Loads.Count == 0 ? new Load { Id = "" } : donor.Loads[at % donor.Loads.Count]) with { Id = load.Id }),
            before.Supplies.Concat(after.Supplies).Select((supply, at) => (donor.Supplies.Count == 0 ? supply : donor.Supplies[at % donor.Supplies.Count]) with { Id = supply.Id }));

        /// <summary>A rig that takes some of what it has from here, with its own figures beside.</summary>
        public Rig In(Rig rig, int loads, int supplies) => rig with
        {
            Loads = [.. rig.Loads.Select((load, at) => (loads >> (at % 8) & 1) == 0 ? load : load with { FromLibrary = FindLoad(load.Id) })],
            Supplies = [.. rig.Supplies.Select((supply, at) => (supplies >> (at % 8) & 1) == 0 ? supply : supply with { FromLibrary = FindSupply(supply.Id) })],
        };

        public Load? FindLoad(string tag) => _loads.GetValueOrDefault(GearTag.KeyOf(tag));

        public Supply? FindSupply(string tag) => _supplies.GetValueOrDefault(GearTag.KeyOf(tag));

        public IReadOnlyList<string> Near(GearKind kind, string tag) =>
            [.. new[] { Core.Texts.NearestWord.Find(tag, kind == GearKind.Load ? _loads.Values.Select(load => load.Id) : _supplies.Values.Select(supply => supply.Id)) }.OfType<string>()];
    }
}
