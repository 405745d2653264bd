using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;
using Loadmark.Core.Rigs;
using Loadmark.Files.Entry;
using Loadmark.Files.Forms;
using Loadmark.Files.Keys;
using Loadmark.Files.PriceLists;

namespace Loadmark.Files.Tests;

/// <summary>What is typed for a key is read whole, or refused with its place: nothing of it is passed over in silence.</summary>
public sealed partial class TypedFigureTests
{
    private static readonly string[] FreeTexts = ["name", "kind", "label", "bank", "plug", "lead", "rig", "board"];

    private static readonly string[] Junk =
    [
        "V", "VV", " V", "x", " x", "x ", "not ", "no ", "2", " 2", "2 ", "0", ",000", "?", "~", "-", " -", "/", "/2", "for", " for", " for 2", "k", "m", "µ", "%", " %", ".", ",", ", ", ";", "; ", "(", ")", "+", "=",
        "about ", "max", " max", " only", " AC", " DC", "⎓", " W", " 2 W", " A", " 300 mA", " Hz", " 50 Hz", " mm²", "AWG", "s", " s", "or", " or ", " or 2 V", " to ", " to 18 V", " each", " centre negative", "negative ", "yes", "_", "e3", "°", "'", "#",
    ];

    /// <summary>Values as they should be, by the kind of key; the schema's own examples come with them.</summary>
    private static readonly Dictionary<string, string[]> Values = new()
    {
        ["priority"] = ["1", "3"],
        ["plugs"] = ["1", "5", "1000"],
        ["count"] = ["1", "12"],
        ["headroom"] = ["10 %", "0.1", "12,5 percent"],
        ["voltage"] = ["9 V", "9-18 V", "9 or 12 V", "9 V AC", "9/12/18 V DC", "9,5V⎓", "12 to 18 volts"],
        ["mains"] = ["230 V 50 Hz", "120 V"],
        ["supply mains"] = ["100-240 V 50/60 Hz", "120 V", "115/230 V~", "100-240V~ 50/60Hz 0.6A"],
        ["at"] = ["9 V", "12,5 V"],
        ["total"] = ["18 W", "2 A", "2 A 18 W", "500mA/4.5W"],
        ["start"] = ["520 mA for 1.5 s", "520 mA"],
    };

    [Fact]
    public void Every_key_takes_its_own_values()
    {
        foreach (var (table, key, value) in AllValues())
            Assert.True(Read(table, key, value).Errors.IsEmpty, $"{table.Name}.{key.Name}: {value}: {string.Join('\n', Read(table, key, value).Errors)}");
    }

    [Fact]
    public void What_is_taken_is_taken_whole()
    {
        var cases = AllValues();
        Check.Sample(
            from at in Gen.Int[0, cases.Count - 1]
            from edits in Gen.Select(Gen.Int[0, Junk.Length - 1], Gen.Int[0, 40], Gen.Bool).Array[1, 2]
            select (at, edits),
            pair =>
            {
                var (table, key, value) = cases[pair.at];
                foreach (var (junk, place, cuts) in pair.edits)
                {
                    var from = place % (value.Length + 1);
                    value = value[..from] + Junk[junk] + value[Math.Min(value.Length, from + (cuts ? 1 : 0))..];
                }

                var reading = Read(table, key, value);
                if (reading.Rig is { } rig)
                    Assert.True(IsWhole(table, key, value) && NumbersAreThere(table, key, value, rig), $"{table.Name}.{key.Name}: {value} is taken");
            },
            iter: Rounds.Of(30_000));
    }

    [Theory]
    [InlineData("9 VV")]
    [InlineData("V18")]
    [InlineData("18 kV")]
    [InlineData("9000 V")]
    [InlineData("18 W")]
    [InlineData("not 18 V")]
    [InlineData("9 V or not 18 V")]
    [InlineData("9 V 300 mA")]
    [InlineData("9 V centre negative")]
    [InlineData("9 V AC/DC")]
    [InlineData("9 V x 2")]
    [InlineData("9-18")]
    [InlineData("about 9 V")]
    [InlineData("9 V max")]
    [InlineData("9 V -")]
    [InlineData("230 V")]
    public void A_voltage_that_cannot_be_read_is_refused_with_its_place(string voltage)
    {
        var error = Assert.Single(RigFileReader.Read($"rig: r\nloads:\n  drive-3: {{ label: 9-18V 12mA, voltage: {voltage} }}\n", "f").Errors);
        Assert.Equal((3, 42), (error.Line, error.Column));
        Assert.StartsWith($"voltage: expected a voltage such as 9 V, 9-18 V or 9 V AC, found \"{voltage}\"; ", error.Message, StringComparison.Ordinal);

        Assert.Contains("voltage", GearForm.ReadLoad("x", new Dictionary<string, string> { ["voltage"] = voltage }).Faults.Keys);
        Assert.NotNull(LoadTable.Read($"tag,label,voltage\nx,9-18V 12mA,\"{voltage}\"\n", new EntryTarget(EntryKind.Loads, [])).Rows[0].Refusal);
    }

    [Theory]
    [InlineData("120 VV")]
    [InlineData("24 V")]
    [InlineData("12 V 120 V")]
    [InlineData("not 230 V")]
    [InlineData("50 Hz")]
    [InlineData("230 V 9 V")]
    [InlineData("9000 V")]
    [InlineData("230 V or so")]
    [InlineData("100-240V~ 50/60Hz ..6A")]
    [InlineData("100-240V~ 50/60Hz ...6A")]
    [InlineData("..230V 50Hz")]
    [InlineData("10 ma⎓-240 V")]
    [InlineData("0-240 V 50/60 Hz")]
    public void A_mains_input_that_cannot_be_read_is_refused_with_its_place(string mains)
    {
        var error = Assert.Single(RigFileReader.Read($"rig: r\nsupplies:\n  brick: {{ label: 9V 2A, mains: {mains} }}\n", "f").Errors);
        Assert.Equal((3, 33), (error.Line, error.Column));
        Assert.StartsWith($"mains: expected a mains input such as 100-240 V, found \"{mains}\"; ", error.Message, StringComparison.Ordinal);

        Assert.Contains("mains", GearForm.ReadSupply("x", new Dictionary<string, string> { ["label"] = "9V 2A", ["mains"] = mains }).Faults.Keys);
        Assert.NotNull(SupplyTable.Read($"supply,label,mains\nx,9V 2A,{mains}\n", []).Rows[0].Refusal);
        Assert.NotEmpty(PriceListReader.Read($"supply,price,label,mains\nx,5,9V 2A,{mains}\n", "f").Errors);
    }

    [Theory]
    [InlineData("loads: { x: { start: 520 mA for } }")]
    [InlineData("loads: { x: { start: ~520 mA } }")]
    [InlineData("loads: { x: { start: 520 mA ~1.5 s } }")]
    [InlineData("supplies: { s: { label: 9V, total: 2 A for 18 W } }")]
    [InlineData("supplies: { s: { label: 9V, total: /2 A } }")]
    [InlineData("mains: ~230 V")]
    [InlineData("mains: 230 V/")]
    [InlineData("leads: { l: { plugs: '1,000' } }")]
    [InlineData("leads: { l: { wire: 2AWG4 } }")]
    [InlineData("leads: { l: { wire: AWG 24 AWG } }")]
    [InlineData("headroom: 1,000 %")]
    public void Other_figures_have_no_loose_ends(string line) => Assert.Single(RigFileReader.Read($"rig: r\n{line}\n", "f").Errors);

    [Theory]
    [InlineData("centre negative 18 V")]
    [InlineData("not centre negative")]
    [InlineData("centre negative or so")]
    public void A_polarity_in_a_table_is_taken_whole(string polarity) =>
        Assert.NotNull(LoadTable.Read($"tag,label,polarity\nx,9V 12mA,{polarity}\n", new EntryTarget(EntryKind.Loads, [])).Rows[0].Refusal);

    private static List<(KeyTable Table, Key Key, string Value)> AllValues()
    {
        var all = new List<(KeyTable, Key, string)>();
        foreach (var table in (KeyTable[])[RigKeys.Rig, .. RigKeys.Groups])
        {
            foreach (var key in table.Keys.Where(key => key.Group is null && key.Form != ValueForm.List && !FreeTexts.Contains(key.Name) && key.Name is not ("from" or "to")))
            {
                var values = key.Form == ValueForm.YesNo ? ["yes", "false"] : key.Words.Concat(key.Examples).Concat(Values.GetValueOrDefault($"{table.Name} {key.Name}") ?? Values.GetValueOrDefault(key.Name) ?? []);
                if (table == SupplyKeys.Table && key.Name == "mains")
                    values = Values["supply mains"];
                Assert.NotEmpty(values);
                all.AddRange(values.Select(value => (table, key, value)));
            }
        }

        return all;
    }

    private static RigFileResult Read(KeyTable table, Key key, string value)
    {
        var entry = $"{JsonSerializer.Serialize(key.Name)}: {JsonSerializer.Serialize(value)}";
        var text = table.Name switch
        {
            "load" => $"loads: {{ x: {{ {entry} }} }}",
            "supply" => $"supplies: {{ s: {{ outlets: {{ 1: '' }}, {entry} }} }}",
            "outlet" => $"supplies: {{ s: {{ outlets: {{ 1: {{ {entry} }} }} }} }}",
            "bank" => $"supplies: {{ s: {{ outlets: {{ 1: {{ bank: b }} }}, banks: {{ b: {{ {entry} }} }} }} }}",
            "lead" => $"leads: {{ l: {{ {entry} }} }}",
            "feed" => $"loads: {{ x: }}\nsupplies: {{ s: {{ outlets: {{ 1-2: '' }} }} }}\nwired: [{{ from: [s/1, s/2], {(key.Name == "joined" ? "" : "joined: series, ")}to: x, {entry} }}]",
            _ => entry,
        };
        return RigFileReader.Read($"rig: r\n{text}\n", "f");
    }

    /// <summary>Whether a value is one by the reference for users, from its first character to its last.</summary>
    private static bool IsWhole(KeyTable table, Key key, string value)
    {
        const string amps = "(A|a|mA|ma|MA|Ma|[µμ]A|µa|uA|ua|(?i:amps?|amperes?|milliamps?|milliamperes?|microamps?))";
        const string watts = "(W|w|mW|mw|kW|kw|(?i:watts?|milliwatts?))";
        const string volts = "(V|v|mV|mv|(?i:volts?|millivolts?))";
        const string hertz = "([Hh]z|HZ|(?i:hertz))";
        const string seconds = "(s|ms|[µμ]s|us|min|(?i:secs?|seconds?|milliseconds?|minutes?))";
        const string joint = @"\s*[,;/]?\s*";
        var figures = (table.Name, key.Name, key.Form) switch
        {
            (_, _, ValueForm.Word) => string.Join('|', key.Words.Select(word => $"(?i:{word.Replace(" ", "[ _-]", StringComparison.Ordinal)})")),
            (_, _, ValueForm.YesNo) => "(?i:yes|no|true|false|on|off)",
            (_, _, ValueForm.Number) => "[0-9]+",
            (_, _, ValueForm.Share) => Number + @"\s*(%|(?i:percent|per cent))?",
            (_, "voltage", _) or ("supply", "mains", _) => @"(?:(?i:Number)|\s|V|v|(?i:volts?|mv|vdc|vac|dc|ac|d\.c\.|a\.c\.|to|or|and|hz)|[-–—…/,;~⎓=+]|\.\.|A|(?i:ma)|W|VA)+".Replace("(?i:Number)", Number, StringComparison.Ordinal),
            (_, "current" or "run", _) => Figure(amps),
            (_, "watts", _) => Figure(watts) + "|" + Number,
            (_, "start" or "surge", _) => Figure(amps) + $@"((\s+for\s*|{joint}){Figure(seconds)})?",
            (_, "total", _) => $"{Figure(amps)}({joint}{Figure(watts)})?|{Figure(watts)}({joint}{Figure(amps)})?",
            (_, "starts_below" or "stops_below" or "no_load" or "at", _) => Figure(volts),
            (_, "input_capacitance", _) => Figure("(F|mF|[µμ]F|uF|uf|nF|pF)"),
            (_, "mains", _) => Figure(volts) + $@"\s*~?({joint}{Figure(hertz)})?",
            (_, "length" or "tail" or "pitch", _) => Figure("(m|cm|mm|(?i:met(re|er)s?))"),
            (_, "wire", _) => Figure("(mm²|mm2|mm\\^2|(?i:sqmm|sq mm))") + @"|(?i:AWG)\s*[0-9]+|[0-9]+\s*(?i:AWG)",
            (_, "source_ohms" or "ohms" or "contact_ohms", _) => Figure("(Ω|\u2126|mΩ|m\u2126|kΩ|k\u2126|R|(?i:ohms?|milliohms?|kohm))") + "|" + Number,
            _ => throw new InvalidOperationException($"{table.Name}.{key.Name} has no grammar here."),
        };
        return Regex.IsMatch(value, $@"^\s*({figures})\s*$", RegexOptions.None, TimeSpan.FromSeconds(10));
    }

    private const string Number = @"\+?\s*([0-9]+([.,][0-9]+)?|[.,][0-9]+)";

    private static string Figure(string unit) => $@"{Number}\s*{unit}";

    /// <summary>Whether each number in a voltage's text is one of what was read, so that none is passed over.</summary>
    private static bool NumbersAreThere(KeyTable table, Key key, string value, Rig rig)
    {
        var plate = key.Name == "voltage" ? rig.Loads[0].Voltage : table.Name == "supply" && key.Name == "mains" ? rig.Supplies[0].Mains : null;
        if (plate is null)
            return true;
        var read = new List<decimal>();
        AddRange(plate.Mains?.Volts);
        AddRange(plate.Mains?.Hertz);
        foreach (var choice in plate.Mains?.Choices ?? [])
            AddRange<Volt>(choice);
        foreach (var mode in plate.Modes)
        {
            AddRange(mode.Volts);
            AddRange(mode.Hertz);
        }

        if (plate.Mains?.Amps is { } amps)
            read.AddRange([amps.Value, amps.Value * 1000]);
        if (plate.Mains?.Watts is { } watts)
            read.Add(watts.Value);
        if (plate.Mains?.VoltAmps is { } voltAmps)
            read.Add(voltAmps.Value);
        read.AddRange([.. read.Select(number => number * 1000)]);
        return Numbers().Matches(value).All(match => read.Contains(decimal.Parse(match.Value.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture)))
            && (plate.Modes.Length > 0 || plate.Mains?.Volts is not null);

        void AddRange<TUnit>(QuantityRange<TUnit>? range)
            where TUnit : struct, IUnit
        {
            if (range is { } ends)
                read.AddRange([ends.Low.Value, ends.High.Value]);
        }
    }

    [GeneratedRegex(@"[0-9]+([.,][0-9]+)?|[.,][0-9]+", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Numbers();
}
