using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Forms;

namespace Loadmark.Files.Tests.Forms;

/// <summary>What is typed field by field reads as in a rig file: nothing is lost, and what is wrong is said at its field.</summary>
public sealed class GearFormTests
{
    private static readonly string[] Awkward =
    [
        "", " ", "'", "\"", "a: b", "- x", "{", "}", "[1, 2]", "&a", "*a", "!!str x", "|", ">", "? x", "#", "x #y", "---", "...", "%YAML", "@", "`",
        "a\nb: c", "a\r\nb", "\t", "\0", "\u0001", "\u001B[31m", "\u2028", "\uFEFF", "\uD800", "\uDC00x", "<script>alert(1)</script>", "{0}", "1-4", "1-99999999999", "4-1", "1/2",
        "../../etc/passwd", "=1+1", "null", "yes", "~", "0x1F", "1e999", "٣ V", "9 V 150 mA",
    ];

    [Fact]
    public void What_a_load_says_reads_as_the_load() => RigGen.Rigs.Sample(
        rig => Assert.All(rig.Loads, load => AssertSame(load with { Label = Said(load.Label) }, GearForm.ReadLoad(load.Id, GearForm.ValuesOf(load)))),
        iter: 150);

    [Fact]
    public void What_a_supply_and_its_outlets_say_reads_as_they_are() => RigGen.Rigs.Sample(
        rig => Assert.All(rig.Supplies, supply =>
        {
            AssertSame(supply with { Label = Said(supply.Label) }, GearForm.ReadSupply(supply.Id, GearForm.ValuesOf(supply), supply));
            Assert.All(supply.Outlets, outlet => AssertSame(outlet, GearForm.ReadOutlet(outlet.Id, GearForm.ValuesOf(outlet))));
        }),
        iter: 150);

    [Fact]
    public void What_a_lead_says_reads_as_the_lead() => RigGen.Rigs.Sample(
        rig => Assert.All(rig.Leads, lead => AssertSame(lead, GearForm.ReadLead(lead.Id, GearForm.ValuesOf(lead)))),
        iter: 150);

    [Fact]
    public void What_a_rig_says_reads_as_its_mains_and_headroom() => RigGen.Rigs.Sample(
        rig =>
        {
            var reading = GearForm.ReadRig(GearForm.ValuesOf(rig));
            Assert.Empty(reading.Faults);
            Assert.Equal((rig.Mains, rig.Headroom), (reading.Value!.Mains, reading.Value.Headroom));
        },
        iter: 150);

    /// <summary>What the label says, what follows from it and what is assumed hold where nothing is typed, and what is typed is not repeated.</summary>
    [Fact]
    public void What_is_in_force_stands_for_every_field_that_is_empty_and_known()
    {
        var load = new Load { Id = "preamp-2", Label = NameplateReader.Read("18V DC 1.08W"), Polarity = Polarity.CentrePositive };
        var found = InForce.Of(load);
        Assert.Equal(new FieldInForce("18 V DC", Origin.Stated), found["voltage"]);
        Assert.Equal(new FieldInForce("60 mA", Origin.Derived), found["current"]);
        Assert.Equal(new FieldInForce("60 mA", Origin.Derived), found["run"]);
        Assert.DoesNotContain("polarity", found.Keys); // typed
        Assert.DoesNotContain("plug", found.Keys); // 18 V: not known
        Assert.Equal(new FieldInForce("centre negative", Origin.Assumed), InForce.Of(load with { Label = NameplateReader.Read("9V 12mA"), Polarity = null })["polarity"]);
        Assert.DoesNotContain("voltage", InForce.Of(load with { Label = null }).Keys);
        Assert.DoesNotContain("current", InForce.Of(load with { Label = NameplateReader.Read("9V DC 9446W") }).Keys); // 1,050 A: no file holds it

        var supply = new Supply { Id = "brick", Label = NameplateReader.Read("INPUT 100-240V~ OUTPUT 9V 500mA isolated centre negative"), Outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("") }] };
        Assert.Equal(Origin.Stated, InForce.Of(supply)["isolated"].Origin);
        Assert.Equal(new FieldInForce("centre negative", Origin.Stated), InForce.Of(supply, supply.Outlets[0])["polarity"]);
        Assert.Equal(Origin.Assumed, InForce.Of(supply with { Label = null })["isolated"].Origin);
    }

    [Fact]
    public void What_is_in_force_can_be_typed_and_changes_nothing_that_is_known() => RigGen.Rigs.Sample(
        rig => Assert.All(rig.Loads, load =>
        {
            var values = new Dictionary<string, string>(GearForm.ValuesOf(load));
            foreach (var (key, found) in InForce.Of(load))
            {
                Assert.DoesNotContain(key, values.Keys);
                var typed = GearForm.ReadLoad(load.Id, new Dictionary<string, string>(values) { [key] = found.Text });
                Assert.Empty(typed.Faults);
            }
        }),
        iter: 100);

    [Fact]
    public void What_is_in_force_of_supplies_and_outlets_can_be_typed() => RigGen.Rigs.Sample(
        rig => Assert.All(rig.Supplies, supply =>
        {
            foreach (var (key, found) in InForce.Of(supply))
                Assert.Empty(GearForm.ReadSupply(supply.Id, new Dictionary<string, string>(GearForm.ValuesOf(supply)) { [key] = found.Text }, supply).Faults);
            foreach (var outlet in supply.Outlets)
            {
                foreach (var (key, found) in InForce.Of(supply, outlet))
                    Assert.Empty(GearForm.ReadOutlet(outlet.Id, new Dictionary<string, string>(GearForm.ValuesOf(outlet)) { [key] = found.Text }).Faults);
            }
        }),
        iter: 100);

    [Theory]
    [InlineData("OUTPUT 9V 500mA, total 5000 A")]
    [InlineData("OUTPUT 9V 9446W")]
    public void A_label_of_figures_that_no_file_holds_has_a_form_all_the_same(string label)
    {
        var supply = new Supply { Id = "brick", Label = NameplateReader.Read(label), Outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("") }] };
        Assert.NotEmpty(InForce.Of(supply));
        Assert.NotNull(InForce.Of(supply, supply.Outlets[0]));
        Assert.NotNull(InForce.Of(new Load { Id = "amp", Label = NameplateReader.Read(label) }));
    }

    [Fact]
    public void The_fields_are_the_keys_that_hold_one_value()
    {
        Assert.Equal(
            ["name", "kind", "label", "voltage", "current", "watts", "run", "start", "polarity", "plug", "ground", "isolate", "draws", "starts_below", "stops_below", "input_capacitance", "priority", "board"],
            GearForm.LoadFields.Select(field => field.Key));
        Assert.DoesNotContain(GearForm.SupplyFields, field => field.Key is "outlets" or "banks");
        Assert.Equal(["mains", "headroom"], GearForm.RigFields.Select(field => field.Key));
        Assert.Equal(["centre negative", "centre positive"], GearForm.OutletFields.Single(field => field.Key == "polarity").Words);
        Assert.True(GearForm.LoadFields.Single(field => field.Key == "isolate").IsYesNo);
        Assert.Equal("type", GearForm.LeadFields[0].Key);
    }

    [Fact]
    public void Empty_fields_say_nothing()
    {
        var values = GearForm.LoadFields.ToDictionary(field => field.Key, _ => "  ");
        AssertSame(new Load { Id = "drive-3" }, GearForm.ReadLoad("drive-3", values));
        AssertSame(new Lead { Id = "flip" }, GearForm.ReadLead("flip", new Dictionary<string, string>()));
        Assert.Empty(GearForm.ValuesOf(new Load { Id = "drive-3" }));
    }

    [Fact]
    public void Typed_figures_become_the_load()
    {
        var reading = GearForm.ReadLoad("delay-2", new Dictionary<string, string>
        {
            ["kind"] = "digital",
            ["run"] = " 210mA ",
            ["start"] = "0,52 A for 1.5 s",
            ["isolate"] = "yes",
            ["polarity"] = "centre positive",
            ["priority"] = "1",
        });
        AssertSame(
            new Load
            {
                Id = "delay-2",
                Kind = new LoadKind("digital"),
                Run = new Amps(0.21m),
                Start = new TimedCurrent(new Amps(0.52m), new Seconds(1.5m)),
                Isolate = true,
                Polarity = Polarity.CentrePositive,
                Priority = 1,
            },
            reading);
    }

    [Theory]
    [InlineData("run", "300", "the unit is missing")]
    [InlineData("run", "-3 mA", "below zero")]
    [InlineData("watts", "3 A", "expected a power")]
    [InlineData("voltage", "0 V", "must be more than zero")]
    [InlineData("start", "1 A for ever", "520 mA for 1.5 s")]
    [InlineData("polarity", "centre", "centre negative")]
    [InlineData("isolate", "maybe", "expected yes or no")]
    [InlineData("priority", "4", "a whole number from 1 to 3")]
    [InlineData("input_capacitance", "3 V", "a capacitance such as 100 µF")]
    [InlineData("draws", "less", "current, power, resistance")]
    public void A_load_is_refused_at_the_field_that_is_wrong_in_the_words_of_a_file(string key, string typed, string words)
    {
        // Every other field is filled, so that a fault at the wrong place shows.
        var values = new Dictionary<string, string> { ["name"] = "Long one", ["label"] = "9V 30mA", ["plug"] = "5.5x2.5", [key] = typed, ["ground"] = "negative" };
        var reading = GearForm.ReadLoad("drive-3", values);
        Assert.Null(reading.Value);
        var (at, message) = Assert.Single(reading.Faults);
        Assert.Equal(key, at);
        Assert.Contains(words, message, StringComparison.Ordinal);
        Assert.Equal(FileFault($"loads: {{ drive-3: {{ {key}: {Json(typed)} }} }}"), message);
    }

    [Theory]
    [InlineData("total", "18", "expected amps, watts or both")]
    [InlineData("overload", "shrug", "one of current limit, foldback, hiccup, fuse")]
    [InlineData("mains", "watts", "mains")]
    [InlineData("regulated", "perhaps", "expected yes or no")]
    public void A_supply_is_refused_at_the_field_that_is_wrong(string key, string typed, string words)
    {
        ValueList<Outlet> outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("9 V 1 A") }];
        var reading = GearForm.ReadSupply("brick", new Dictionary<string, string> { ["name"] = "The brick", [key] = typed, ["isolated"] = "yes" }, new Supply { Id = "brick", Outlets = outlets });
        Assert.Null(reading.Value);
        var (at, message) = Assert.Single(reading.Faults);
        Assert.Equal(key, at);
        Assert.Contains(words, message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("source_ohms", "1 V")]
    [InlineData("surge", "1 A for 0 s")]
    [InlineData("no_load", "13.2")]
    [InlineData("isolated", "ish")]
    public void An_outlet_is_refused_at_the_field_that_is_wrong(string key, string typed)
    {
        var reading = GearForm.ReadOutlet("1", new Dictionary<string, string> { ["label"] = "9 V 1 A", [key] = typed, ["plug"] = "5.5x2.1" });
        Assert.Null(reading.Value);
        Assert.Equal(key, Assert.Single(reading.Faults).Key);
    }

    [Theory]
    [InlineData("type", "dasy chain", "did you mean 'daisy chain'?")]
    [InlineData("length", "3", "the unit is missing")]
    [InlineData("plugs", "0", "a whole number from 1 to 1000")]
    [InlineData("wire", "thick", "wire")]
    [InlineData("ohms", "1 A", "ohms")]
    public void A_lead_is_refused_at_the_field_that_is_wrong(string key, string typed, string words)
    {
        var reading = GearForm.ReadLead("long chain", new Dictionary<string, string> { ["count"] = "2", [key] = typed });
        Assert.Null(reading.Value);
        var (at, message) = Assert.Single(reading.Faults);
        Assert.Equal(key, at);
        Assert.Contains(words, message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mains", "230", "the unit is missing")]
    [InlineData("headroom", "100 %", "must be below 100 %")]
    [InlineData("headroom", "10", "did you mean '10 %'?")]
    public void A_rig_is_refused_at_the_field_that_is_wrong(string key, string typed, string words)
    {
        var reading = GearForm.ReadRig(new Dictionary<string, string> { [key] = typed });
        Assert.Null(reading.Value);
        var (at, message) = Assert.Single(reading.Faults);
        Assert.Equal(key, at);
        Assert.Contains(words, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_of_several_faults_is_at_its_own_field()
    {
        var reading = GearForm.ReadLoad("drive-3", new Dictionary<string, string> { ["run"] = "5", ["label"] = "9V", ["watts"] = "x", ["isolate"] = "?", ["plug"] = "5.5x2.1" });
        Assert.Equal(["isolate", "run", "watts"], reading.Faults.Keys.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("a\nb")]
    [InlineData("0123456789012345678901234567890123456789012345678901234567890123456789")]
    public void A_tag_that_a_file_refuses_is_refused_here(string id)
    {
        var reading = GearForm.ReadLoad(id, new Dictionary<string, string>());
        Assert.Null(reading.Value);
        Assert.NotEmpty(reading.Faults);
        Assert.DoesNotContain(reading.Faults.Keys, key => key.Length > 0);
    }

    /// <summary>As in a rig file, where a new label over the library's brings its own outlets with it.</summary>
    [Theory]
    [InlineData("OUTPUTS 1-4 9V 100mA", "OUTPUTS 1-2 9V 100mA, 3 12V 400mA", "1 2 3")]
    [InlineData("OUTPUTS 1-4 9V 100mA", "9V 2A", "1")]
    [InlineData("OUTPUTS 1-4 9V 100mA", "INPUT 100-240V~", "1 2 3 4")]
    [InlineData("INPUT 100-240V~", "OUTPUTS 1-4 9V 100mA", "left")]
    public void Outlets_that_came_from_the_label_are_those_of_the_new_one(string before, string after, string ids)
    {
        var label = NameplateReader.Read(before);
        var supply = new Supply { Id = "brick", Label = label, Outlets = LabelledOutlets.Of(label, out _) ?? [new Outlet { Id = "left", Label = NameplateReader.Read("9 V 1 A") }] };
        var read = GearForm.ReadSupply("brick", new Dictionary<string, string> { ["label"] = after }, supply).Value!;
        Assert.Equal(ids, string.Join(' ', read.Outlets.Items.Select(static outlet => outlet.Id)));
        Assert.Equal(after, read.Label!.Text);
    }

    [Fact]
    public void A_supply_with_a_slash_in_its_name_is_refused()
    {
        ValueList<Outlet> outlets = [new Outlet { Id = "1", Label = NameplateReader.Read("9 V") }];
        var reading = GearForm.ReadSupply("a/b", new Dictionary<string, string>(), new Supply { Id = "a", Outlets = outlets });
        Assert.Null(reading.Value);
        Assert.Contains("'/'", Assert.Single(reading.Faults.Values), StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_is_typed_it_is_read_or_refused() => Gen.Select(Hostile, Hostile, Gen.Int[0, 99]).Sample(
        (id, typed, pick) =>
        {
            var none = new Supply { Id = "none" };
            AssertAnswers(GearForm.LoadFields, pick, typed, values => GearForm.ReadLoad(id, values).Faults.Count, values => GearForm.ReadLoad(id, values).Value is null);
            AssertAnswers(GearForm.OutletFields, pick, typed, values => GearForm.ReadOutlet(id, values).Faults.Count, values => GearForm.ReadOutlet(id, values).Value is null);
            AssertAnswers(GearForm.LeadFields, pick, typed, values => GearForm.ReadLead(id, values).Faults.Count, values => GearForm.ReadLead(id, values).Value is null);
            AssertAnswers(GearForm.RigFields, pick, typed, values => GearForm.ReadRig(values).Faults.Count, values => GearForm.ReadRig(values).Value is null);
            AssertAnswers(GearForm.SupplyFields, pick, typed, values => GearForm.ReadSupply(id, values, none).Faults.Count, values => GearForm.ReadSupply(id, values, none).Value is null);
        },
        iter: 400);

    /// <summary>Texts that have a meaning in YAML, in markup, on a terminal or in a format string, and what is around them.</summary>
    internal static Gen<string> Hostile { get; } = Gen.OneOf(
        Gen.Int[0, Awkward.Length - 1].Select(index => Awkward[index]),
        Gen.String[Gen.Char, 0, 20],
        Gen.String[Gen.Char["{}[]:,#&*!|>'\"%@` \n\t-?0123456789VAm\\"], 0, 20]);

    private static void AssertAnswers(IReadOnlyList<FormField> fields, int pick, string typed, Func<Dictionary<string, string>, int> faults, Func<Dictionary<string, string>, bool> isRefused)
    {
        var values = new Dictionary<string, string> { [fields[pick % fields.Count].Key] = typed, ["no such key"] = typed };
        Assert.Equal(isRefused(values), faults(values) > 0);
    }

    private static void AssertSame<T>(T expected, FormResult<T> reading)
        where T : class
    {
        Assert.Empty(reading.Faults);
        Assert.Equal(expected, reading.Value);
    }

    /// <summary>A field that is left empty says nothing; a file may say that the label is empty, which comes to the same.</summary>
    private static Nameplate? Said(Nameplate? label) => string.IsNullOrWhiteSpace(label?.Text) ? null : label;

    private static string FileFault(string line) => Assert.Single(RigFileReader.Read($"rig: r\n{line}\n", "r").Errors).Message;

    private static string Json(string text) => System.Text.Json.JsonSerializer.Serialize(text);
}
