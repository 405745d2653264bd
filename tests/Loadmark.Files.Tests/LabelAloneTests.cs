using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Loadmark.Files.Parsing;
using Loadmark.Files.PriceLists;

namespace Loadmark.Files.Tests;

/// <summary>A label is enough: a text in the place of keys is what is printed on the thing.</summary>
public sealed class LabelAloneTests
{
    private const string Short = """
        rig: Small board
        loads:
          tuner-1: 9V DC 30mA   # the old one
          drive-3: "9V DC 12mA, centre negative"
        supplies:
          adaptor: 9V 2A        # from the drawer
        wired:
          - { from: adaptor, to: tuner-1 }

        """;

    [Fact]
    public void Says_what_the_keys_say()
    {
        var rig = Fixtures.Read(Short);
        var long1 = Fixtures.Read("""
            rig: Small board
            loads: { tuner-1: { label: 9V DC 30mA }, drive-3: { label: "9V DC 12mA, centre negative" } }
            supplies: { adaptor: { label: 9V 2A, outlets: { 1: "" } } }
            wired: [{ from: adaptor/1, to: tuner-1 }]
            """);
        Assert.Equal(long1, rig);
    }

    [Fact]
    public void Is_read_from_JSON() =>
        Assert.Equal(Fixtures.Read(Short), Fixtures.Read(YamlToJson.Convert(Short)));

    [Fact]
    public void Is_written_where_a_piece_has_only_its_label()
    {
        var text = RigFileWriter.Write(Fixtures.Read(Short));
        Assert.Contains("\n  tuner-1: 9V DC 30mA\n", text, StringComparison.Ordinal);
        Assert.Contains("\n  adaptor: 9V 2A\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("outlets", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_at_all_is_still_a_load_of_which_nothing_is_said() =>
        Assert.Equal(new Load { Id = "drive-3" }, Fixtures.Read("rig: a\nloads:\n  drive-3:\n").Loads[0]);

    [Theory]
    [InlineData("name", "  tuner-1: { kind: tuner, label: 9V DC 30mA }   # the old one\n")]
    [InlineData("rename", "  tuner-2: 9V DC 30mA   # the old one\n")]
    [InlineData("relabel", "  tuner-1: 9V DC 25mA   # the old one\n")]
    [InlineData("delete", "loads:\n  drive-3:")]
    [InlineData("unlabel", "  tuner-1: {}   # the old one\n")]
    public void Survives_an_edit(string what, string expected)
    {
        var rig = Fixtures.Read(Short);
        var load = rig.Loads[0];
        var changed = what switch
        {
            "name" => rig with { Loads = [load with { Kind = new LoadKind("tuner") }, rig.Loads[1]] },
            "rename" => rig with { Loads = [load with { Id = "tuner-2" }, rig.Loads[1]], Wired = [rig.Wired!.Value[0] with { To = ["tuner-2"] }] },
            "relabel" => rig with { Loads = [load with { Label = NameplateReader.Read("9V DC 25mA") }, rig.Loads[1]] },
            "unlabel" => rig with { Loads = [new Load { Id = load.Id }, rig.Loads[1]] },
            _ => rig with { Loads = [rig.Loads[1]], Wired = [] },
        };
        var update = RigFileEditor.Update(Short, changed);
        Assert.Equal(changed, Fixtures.Read(update.Text));
        Assert.Contains(expected, update.Text, StringComparison.Ordinal);
        Assert.Contains("  adaptor: 9V 2A        # from the drawer\n", update.Text, StringComparison.Ordinal);
        Assert.Equal(what != "delete", update.Text.Contains("# the old one", StringComparison.Ordinal));
    }

    [Fact]
    public void A_key_that_comes_and_goes_leaves_the_label()
    {
        var rig = Fixtures.Read(Short);
        var with = RigFileEditor.Update(Short, rig with { Loads = [rig.Loads[0] with { Kind = new LoadKind("tuner") }, rig.Loads[1]] });
        var without = RigFileEditor.Update(with.Text, rig);
        Assert.Contains("  tuner-1: { label: 9V DC 30mA }   # the old one\n", without.Text, StringComparison.Ordinal);
        Assert.Equal(rig, Fixtures.Read(without.Text));
    }

    [Fact]
    public void A_label_on_the_line_below_its_tag_keeps_the_comments_of_both_lines()
    {
        const string text = "rig: a\nloads:\n  drive-3:   # one\n    9V DC 12mA   # two\n";
        var rig = Fixtures.Read(text);
        var update = RigFileEditor.Update(text, rig with { Loads = [rig.Loads[0] with { Priority = 1 }] });
        Assert.Contains("# one\n", update.Text, StringComparison.Ordinal);
        Assert.Contains("# two\n", update.Text, StringComparison.Ordinal);
        Assert.Equal(1, Fixtures.Read(update.Text).Loads[0].Priority);
    }

    [Fact]
    public void A_supply_gets_no_outlets_key_that_nobody_wrote()
    {
        var rig = Fixtures.Read(Short);
        var update = RigFileEditor.Update(Short, rig with { Supplies = [rig.Supplies[0] with { Isolated = true }] });
        Assert.Contains("adaptor:        # from the drawer\n    label: 9V 2A\n    isolated: true\n", update.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("outlets", update.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_outlets_key_that_somebody_wrote_stays_and_is_changed()
    {
        const string text = "rig: a\nsupplies:\n  wall:\n    label: 9V 2A\n    outlets: { 1: \"\" } # one\n";
        var rig = Fixtures.Read(text);
        var supply = rig.Supplies[0];
        Assert.True(LabelledOutlets.AreOf(supply));
        var named = RigFileEditor.Update(text, rig with { Supplies = [supply with { Name = "Wall" }] }).Text;
        Assert.Contains("outlets: { 1: \"\" } # one\n", named, StringComparison.Ordinal);
        var listed = RigFileEditor.Update(text, rig with { Supplies = [supply with { Outlets = [supply.Outlets[0] with { Label = NameplateReader.Read("9V 1A") }] }] }).Text;
        Assert.Contains("outlets: { 1: 9V 1A } # one\n", listed, StringComparison.Ordinal);
        Assert.Contains("outlets: { 1: \"\" } # one\n", RigFileEditor.Update(listed, rig).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_outlet_more_is_listed_beside_the_labels_own()
    {
        var rig = Fixtures.Read(Short);
        var supply = rig.Supplies[0];
        var changed = rig with { Supplies = [supply with { Outlets = [supply.Outlets[0], new Outlet { Id = "2", Label = NameplateReader.Read("9V 100mA") }] }] };
        var update = RigFileEditor.Update(Short, changed);
        Assert.Equal(changed, Fixtures.Read(update.Text));
        Assert.Contains("# from the drawer", update.Text, StringComparison.Ordinal);
        Assert.Contains("- { from: adaptor/1, to: tuner-1 }", update.Text, StringComparison.Ordinal);
        Assert.True(update.CommentsKept);

        var json = RigFileEditor.Update(YamlToJson.Convert(Short), changed).Text;
        Assert.Contains("\"adaptor/1\"", json, StringComparison.Ordinal);
        Assert.Equal(changed, Fixtures.Read(json));
    }

    [Theory]
    [InlineData("brick: INPUT 100-240V~", "nothing tells what outlets this supply has: its label says nothing of what it gives; list them, such as outlets: { 1-4: 9 V 150 mA }")]
    [InlineData("brick: { label: \"\" }", "nothing tells what outlets this supply has: nothing is said of what is printed on it; list them, such as outlets: { 1-4: 9 V 150 mA }")]
    [InlineData("brick: { isolated: yes }", "a supply needs the key 'outlets'")]
    [InlineData("brick:", "a supply needs the key 'outlets'")]
    [InlineData("brick: [9V]", "brick: expected its label, or the keys of a supply, found a list")]
    public void A_supply_whose_label_does_not_tell_its_outlets_is_refused(string supply, string complaint)
    {
        var error = Assert.Single(RigFileReader.Read($"rig: a\nsupplies:\n  {supply}\n", "f").Errors);
        Assert.StartsWith(complaint, error.Message, StringComparison.Ordinal);
        Assert.Equal(3, error.Line);
    }

    [Fact]
    public void What_the_library_says_stays_under_a_label_that_tells_no_outlets()
    {
        var shelf = new Shelf(new Supply { Id = "brick", Label = NameplateReader.Read("9V 2A"), Outlets = LabelledOutlets.Of(NameplateReader.Read("9V 2A"), out _)!.Value });
        foreach (var keys in (string[])["from: library", "from: library, label: 12V 1A", "from: library, label: INPUT 100-240V", "from: library, label: null", "from: library, outlets: null", "from: library, outlets: { 7: 12 V 1 A }"])
        {
            var text = $"rig: a\nsupplies: {{ brick: {{ {keys} }} }}";
            var rig = RigFileReader.Read(text, "f", shelf).Rig!;
            Assert.Equal(keys.EndsWith('}') ? "7" : "1", rig.Supplies[0].Outlets[0].Id);
            Assert.Equal(rig, RigFileReader.Read(RigFileWriter.Write(rig), "f", shelf).Rig);
        }
    }

    [Fact]
    public void Counts_in_files_of_gear_tables_price_lists_and_forms()
    {
        var expected = Fixtures.Read(Short).Supplies[0];
        Assert.Equal(expected, GearFileReader.Read("supplies:\n  adaptor: 9V 2A\n", "f.yaml").Rows[0].Piece!.Supply);
        Assert.Equal(expected, SupplyTable.Read("supply,label\nadaptor,9V 2A\n", []).Rows[0].Supply);
        Assert.Equal(expected, SupplyTable.Read(SupplyTable.Write([expected]), []).Rows[0].Supply);
        Assert.Equal(expected with { Id = "wall" }, LabelLines.Read("wall: 9V 2A", new EntryTarget(EntryKind.Supplies, [])).Rows[0].Supply);
        Assert.Equal(expected, Assert.IsType<Loadmark.Core.Offers.SupplyOffer>(PriceListReader.Read("supply,price,label\nadaptor,5,9V 2A\n", "f").Offers!.Value[0]).Supply);
        Assert.Equal(expected, GearForm.ReadSupply("adaptor", new Dictionary<string, string> { ["label"] = "9V 2A" }).Value);
        Assert.Equal("9V 2A", Assert.Single(GearForm.ValuesOf(expected)).Value);
        Assert.Equal(expected, GearText.Read(GearKind.Supply, "adaptor", GearText.Write(GearPiece.Of(expected))).Piece!.Supply);
    }

    [Fact]
    public void Is_refused_in_all_of_them_where_it_tells_no_outlets()
    {
        const string label = "INPUT 100-240V~";
        Assert.Contains("says nothing of what it gives", GearFileReader.Read($"supplies:\n  adaptor: {label}\n", "f.yaml").Rows[0].Refusal!.Because, StringComparison.Ordinal);
        Assert.Contains("says nothing of what it gives", SupplyTable.Read($"supply,label\nadaptor,{label}\n", []).Rows[0].Refusal!.Because, StringComparison.Ordinal);
        Assert.Contains("says nothing of what it gives", LabelLines.Read($"wall: {label}", new EntryTarget(EntryKind.Supplies, [])).Rows[0].Refusal!.Because, StringComparison.Ordinal);
        Assert.Contains("says nothing of what it gives", PriceListReader.Read($"supply,price,label\nadaptor,5,{label}\n", "f").Errors[0].Message, StringComparison.Ordinal);
        Assert.Contains("says nothing of what it gives", GearForm.ReadSupply("adaptor", new Dictionary<string, string> { ["label"] = label }).Faults["label"], StringComparison.Ordinal);
    }

    private sealed class Shelf(Supply supply) : IGearLookup
    {
        public Load? FindLoad(string tag) => null;

        public Supply? FindSupply(string tag) => tag == supply.Id ? supply : null;

        public IReadOnlyList<string> Near(GearKind kind, string tag) => [];
    }
}
