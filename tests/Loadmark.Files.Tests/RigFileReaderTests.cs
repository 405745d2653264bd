using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Tests;

public sealed class RigFileReaderTests
{
    [Fact]
    public void A_key_that_says_its_unit_takes_a_bare_number()
    {
        var rig = Fixtures.Read("""
            rig: r
            loads: { A: { watts: 6 }, B: { watts: "0,5 W" } }
            supplies: { s: { outlets: { 1: { label: 9 V 1 A, source_ohms: 0 } } } }
            leads: { l: { type: straight, ohms: 2, contact_ohms: 0.02 } }
            """);
        Assert.Equal(new Watts(6), rig.Loads[0].Watts);
        Assert.Equal(new Watts(0.5m), rig.Loads[1].Watts);
        Assert.Equal(Ohms.Zero, rig.Supplies[0].Outlets[0].SourceOhms);
        Assert.Equal(new Ohms(2), rig.Leads[0].Ohms);
        Assert.Equal(new Ohms(0.02m), rig.Leads[0].ContactOhms);
    }

    [Fact]
    public void Reads_every_part_of_a_rig()
    {
        var rig = Fixtures.Read(Fixtures.Pit);

        Assert.Equal("Pit board, bass chair", rig.Name);
        Assert.Equal(new RigMains(new(230), new(50)), rig.Mains);
        Assert.Equal(0.10m, rig.Headroom);
        Assert.Equal(["drive-3", "chorus-1", "drive-4", "delay-2", "fuzz-1", "preamp-1", "preamp-2"], rig.Loads.Select(load => load.Id));
        var delay = rig.Loads[3];
        Assert.Equal("Delay with the long tail", delay.Name);
        Assert.Equal("9V⎓ 300mA", delay.Label!.Text);
        Assert.Equal(new Amps(0.21m), delay.Run);
        Assert.Equal(new TimedCurrent(new(0.52m), new Seconds(1.5m)), delay.Start);
        Assert.True(delay.Isolate);
        Assert.Equal(Polarity.CentrePositive, rig.Loads[4].Polarity);
        Assert.Equal(GroundSide.Positive, rig.Loads[4].Ground);
        Assert.Equal(Plug.WidePin, rig.Loads[5].Plug);
        Assert.Equal(DrawLaw.Resistance, rig.Loads[5].Draws);
        Assert.Equal(3, rig.Loads[2].Priority);
        var brick = rig.Supplies[0];
        Assert.Equal(["1", "2", "3", "4", "5"], brick.Outlets.Select(outlet => outlet.Id));
        Assert.Equal("9 V 150 mA", brick.Outlets[3].Label.Text);
        Assert.Equal(new SupplyTotal(null, new Watts(18)), brick.Total);
        Assert.True(brick.Isolated);
        Assert.Null(rig.Supplies[1].Isolated);
        Assert.Equal("", rig.Supplies[1].Outlets[0].Label.Text);
        Assert.Equal(OverloadWay.Hiccup, rig.Supplies[1].Overload);
        Assert.Equal(LeadType.DaisyChain, rig.Leads[0].Type);
        Assert.Equal(5, rig.Leads[0].Plugs);
        Assert.Equal(Wire.OfArea(new(0.22e-6m)), rig.Leads[0].Wire);
        var wired = rig.Wired!.Value;
        Assert.Equal(4, wired.Count);
        Assert.Equal(new Volts(9), wired[1].SettingOf(0));
        Assert.Equal("long chain", wired[2].Lead);
        Assert.Equal(["chorus-1", "drive-4"], wired[2].To);
        Assert.Equal(Joint.Series, wired[3].Joined);
        Assert.Equal([new OutletRef("brick", "2"), new OutletRef("brick", "3")], wired[3].From);
        Assert.Equal("amp", rig.Signal[4]);
    }

    [Fact]
    public void Reads_JSON_with_tabs_and_escapes()
    {
        var rig = Fixtures.Read(Fixtures.Json);
        Assert.Equal("Pit ² 🎸", rig.Name);
        Assert.Equal(new OutletRef("wall", "1"), rig.Wired!.Value[0].From[0]);
    }

    [Theory]
    [InlineData("yes", true)]
    [InlineData("True", true)]
    [InlineData("ON", true)]
    [InlineData("no", false)]
    [InlineData("FALSE", false)]
    [InlineData("off", false)]
    public void Takes_yes_and_no_in_many_words(string word, bool expected) =>
        Assert.Equal(expected, Fixtures.Read($"rig: r\nloads: {{ x: {{ isolate: {word} }} }}").Loads[0].Isolate);

    [Theory]
    [InlineData("centre negative", Polarity.CentreNegative)]
    [InlineData("center negative", Polarity.CentreNegative)]
    [InlineData("Centre-Negative", Polarity.CentreNegative)]
    [InlineData("CENTER_POSITIVE", Polarity.CentrePositive)]
    public void Takes_polarity_in_both_spellings(string word, Polarity expected) =>
        Assert.Equal(expected, Fixtures.Read($"rig: r\nloads: {{ x: {{ polarity: {word} }} }}").Loads[0].Polarity);

    [Theory]
    [InlineData("10 %", "0.1")]
    [InlineData("10%", "0.1")]
    [InlineData("0.1", "0.1")]
    [InlineData("0,1", "0.1")]
    [InlineData("10 percent", "0.1")]
    [InlineData("12,5 per cent", "0.125")]
    [InlineData("0", "0")]
    [InlineData("1 %", "0.01")]
    public void Takes_headroom_as_a_share(string text, string expected) =>
        Assert.Equal(decimal.Parse(expected, CultureInfo.InvariantCulture), Fixtures.Read($"rig: r\nheadroom: {text}").Headroom);

    [Theory]
    [InlineData("230 V 50 Hz", "230", "50")]
    [InlineData("230V/50Hz", "230", "50")]
    [InlineData("230V~50Hz", "230", "50")]
    [InlineData("230V50Hz", "230", "50")]
    [InlineData("120 V, 60 Hz", "120", "60")]
    [InlineData("230 V", "230", null)]
    public void Takes_mains(string text, string volts, string? hertz)
    {
        var mains = Fixtures.Read($"rig: r\nmains: {text}").Mains!;
        Assert.Equal(decimal.Parse(volts, CultureInfo.InvariantCulture), mains.Volts.Value);
        Assert.Equal(hertz, mains.Hertz?.ToNumberString());
    }

    [Theory]
    [InlineData("18 W", null, "18")]
    [InlineData("2 A", "2", null)]
    [InlineData("2 A 18 W", "2", "18")]
    [InlineData("18W, 2,5A", "2.5", "18")]
    [InlineData("500mA/4.5W", "0.5", "4.5")]
    public void Takes_totals_in_amps_watts_or_both(string text, string? amps, string? watts)
    {
        var total = Fixtures.Read($"rig: r\nsupplies: {{ a: {{ total: \"{text}\", outlets: {{ 1: }} }} }}").Supplies[0].Total!;
        Assert.Equal(amps, total.Amps?.ToNumberString());
        Assert.Equal(watts, total.Watts?.ToNumberString());
    }

    [Theory]
    [InlineData("520 mA for 1.5 s", "0.52", "1.5")]
    [InlineData("1A for 100ms", "1", "0.1")]
    [InlineData("0,5 A FOR 2 s", "0.5", "2")]
    [InlineData("1 A", "1", null)]
    public void Takes_starting_currents(string text, string amps, string? seconds)
    {
        var start = Fixtures.Read($"rig: r\nloads: {{ x: {{ start: \"{text}\" }} }}").Loads[0].Start!.Value;
        Assert.Equal(amps, start.Current.ToNumberString());
        Assert.Equal(seconds, start.Duration?.ToNumberString());
    }

    [Theory]
    [InlineData("AWG 24", 24)]
    [InlineData("24 AWG", 24)]
    [InlineData("awg18", 18)]
    public void Takes_wire_by_gauge(string text, int gauge) =>
        Assert.Equal(Wire.OfGauge(gauge), Fixtures.Read($"rig: r\nleads: {{ x: {{ wire: {text} }} }}").Leads[0].Wire);

    [Theory]
    [InlineData("5.5x2.1", "5.5x2.1")]
    [InlineData("5,5 × 2,1 mm", "5.5x2.1")]
    [InlineData("2.5mm X 5.5mm", "5.5x2.5")]
    [InlineData("3.5 mm jack", "3.5 mm jack")]
    [InlineData("box with x", "box with x")]
    public void Brings_plug_sizes_to_one_spelling(string text, string name) =>
        Assert.Equal(name, Fixtures.Read($"rig: r\nloads: {{ x: {{ plug: \"{text}\" }} }}").Loads[0].Plug!.Value.Name);

    [Theory]
    [InlineData("1-3", "1 2 3")]
    [InlineData("2–3", "2 3")]
    [InlineData("09-11", "09 10 11")]
    [InlineData("7-7", "7")]
    [InlineData("left-right", "left-right")]
    public void Expands_ranges_of_outlets(string id, string ids) =>
        Assert.Equal(ids.Split(' '), Fixtures.Read($"rig: r\nsupplies: {{ a: {{ outlets: {{ {id}: 9 V 1 A }} }} }}").Supplies[0].Outlets.Select(outlet => outlet.Id));

    [Fact]
    public void Reads_an_outlet_written_out_and_its_bank()
    {
        var supply = Fixtures.Read("""
            rig: r
            supplies:
              a:
                regulated: no
                mains: 100-240 V
                banks: { left: 500 mA, right: { total: 4 W } }
                outlets:
                  1: { label: 9 V 1 A, isolated: no, bank: left, polarity: centre positive, plug: 5.5x2.1, source_ohms: 50 mΩ, surge: 2 A for 10 ms, no_load: "13,2 V" }
                  2: { bank: right }
                  3: { bank: loose }
            """).Supplies[0];
        Assert.Equal(new Bank("left", new SupplyTotal(new Amps(0.5m), null)), supply.Banks[0]);
        Assert.Equal(new Bank("right", new SupplyTotal(null, new Watts(4))), supply.Banks[1]);
        Assert.False(supply.Regulated);
        Assert.Equal("100-240 V", supply.Mains!.Text);
        var outlet = supply.Outlets[0];
        Assert.False(outlet.Isolated);
        Assert.Equal(new Ohms(0.05m), outlet.SourceOhms);
        Assert.Equal(new Volts(13.2m), outlet.NoLoad);
        Assert.Equal(new TimedCurrent(new(2), new Seconds(0.01m)), outlet.Surge);
        Assert.Equal("loose", supply.Outlets[2].Bank);
    }

    [Theory]
    [InlineData("", null)]
    [InlineData("wired:", null)]
    [InlineData("wired: ~", null)]
    [InlineData("wired: []", 0)]
    [InlineData("wired: [{ from: wall, to: drive-3 }]", 1)]
    [InlineData("wired: [{ from: a/1, to: drive-3 }, { from: a/1, to: drive-3 }]", 2)]
    public void Tells_no_wiring_from_empty_wiring_and_leaves_double_use_to_the_rules(string text, int? feeds) =>
        Assert.Equal(feeds, Fixtures.Read(Fixtures.Small(text)).Wired?.Count);

    [Fact]
    public void Takes_a_plain_straight_lead_that_is_not_listed()
    {
        Assert.Null(Fixtures.Read(Fixtures.Small("wired: [{ from: wall, lead: straight, to: drive-3 }]")).Wired!.Value[0].Lead);
        Assert.Equal("straight", Fixtures.Read(Fixtures.Small("leads: { straight: { count: 2 } }\nwired: [{ from: wall, lead: straight, to: drive-3 }]")).Wired!.Value[0].Lead);
    }

    [Fact]
    public void Takes_one_setting_for_all_outlets_or_one_for_each()
    {
        var wired = Fixtures.Read(Fixtures.Small("wired: [{ from: [a/1, a/2], joined: series, at: 9 V, to: drive-3 }, { from: [a/1, a/2], joined: parallel, at: [9 V, 9 V], to: delay-2, pinned: yes }]")).Wired!.Value;
        Assert.Equal([new Volts(9)], wired[0].At);
        Assert.Equal([new Volts(9), new Volts(9)], wired[1].At);
        Assert.True(wired[1].Pinned);
    }
}
