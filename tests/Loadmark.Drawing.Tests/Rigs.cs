using System.Text;
using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files;

namespace Loadmark.Drawing.Tests;

/// <summary>Rigs to draw: the examples, written ones, and random ones with every kind of lead, mistake and name.</summary>
internal static class Rigs
{
    public static readonly double[] Widths = [300, 360, 559, 560, 720, 1100, 1600];

    public static IEnumerable<string> ExampleFiles =>
        Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.rig.yaml").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal);

    public static Rig Example(string file) => Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", file)));

    public static Rig Read(string yaml)
    {
        var reading = RigFileReader.Read(yaml, "test.rig.yaml");
        Assert.True(reading.Rig is not null, string.Join("; ", reading.Errors));
        return reading.Rig;
    }

    public static (Rig Rig, CheckResult Check) Checked(string yaml)
    {
        var rig = Read(yaml);
        return (rig, NameplateCheck.Of(rig));
    }

    public static readonly Gen<string> HostileText = Gen.OneOf(
        Gen.Const("<script>alert(1)</script>"),
        Gen.Const("\"><svg onload=alert(1)>&amp;<![CDATA["),
        Gen.Const("\u202Egnorw\u202C \u0000\u0001\u001b[31m\u0085"),
        Gen.Const("مرحبا بالعالم"),
        Gen.Const("🎸🎛️👩‍🎤 \uD83C broken \uDFB8"),
        Gen.Const("a\u0301\u0302\u0303\u0304\u0305\u0306\u0307"),
        Gen.Const("\uFFFE\uFFFF\uFDFD𒐫⸻"),
        Gen.Const(new string('W', 5000)),
        Gen.Const(string.Concat(Enumerable.Repeat("長い名前", 400))),
        Gen.Char.Array[0, 40].Select(static characters => new string(characters)),
        Gen.String.AlphaNumeric);

    private static readonly string[] Labels = ["9V 20mA", "9V", "18V DC 250mA", "9V AC 800mA", "9-18V 45mA centre positive", "", "12V 4.5W", "9V 1.5A"];
    private static readonly string[] OutletLabels = ["9 V 100 mA", "9 V 500 mA; 12 V 400 mA; 18 V 250 mA", "9 V", "", "12 V AC 1 A", "9 V DC 2 A centre positive"];

    /// <summary>Random rigs; ids are made unique by a number in front.</summary>
    public static readonly Gen<Rig> Random =
        from names in HostileText.Array[4, 8]
        from loadLabels in Gen.Int[0, Labels.Length - 1].Array[0, 14]
        from supplySizes in Gen.Int[0, 6].Array[0, 4]
        from numbers in Gen.Int[0, 1_000_000].Array[120]
        from headroom in Gen.Int[0, 99]
        select Build(names, loadLabels, supplySizes, numbers, headroom / 100m);

    private static Rig Build(string[] names, int[] loadLabels, int[] supplySizes, int[] numbers, decimal headroom)
    {
        var used = 0;
        int Next(int below) => numbers[used++ % numbers.Length] % below;
        string Name(int index) => names[index % names.Length];
        var loads = loadLabels.Select((label, index) => new Load
        {
            Id = $"{index}{Name(index)}",
            Name = Next(3) == 0 ? null : Name(index + 1),
            Kind = Next(2) == 0 ? new LoadKind("digital") : null,
            Label = NameplateReader.Read(Labels[label]),
            Start = Next(3) == 0 ? new TimedCurrent(new Amps(0.7m), new Seconds(1)) : null,
            Ground = Next(5) == 0 ? GroundSide.Positive : null,
            Isolate = Next(4) == 0,
        }).ToArray();
        var supplies = supplySizes.Select((size, index) => new Supply
        {
            Id = $"s{index}{Name(index + 2)}",
            Name = Next(2) == 0 ? Name(index + 3) : null,
            Isolated = Next(3) switch { 0 => null, 1 => true, _ => false },
            Total = Next(2) == 0 ? new SupplyTotal(null, new Watts(Next(30) + 1)) : null,
            Banks = [new Bank("x", new SupplyTotal(new Amps(0.3m), null))],
            Outlets = [.. Enumerable.Range(1, size).Select(outlet => new Outlet { Id = $"{outlet}", Label = NameplateReader.Read(OutletLabels[Next(OutletLabels.Length)]), Bank = Next(4) == 0 ? "x" : null })],
        }).ToArray();
        Lead[] leads =
        [
            new Lead { Id = $"chain {Name(0)}", Type = LeadType.DaisyChain, Plugs = 5 },
            new Lead { Id = "flip", Type = LeadType.Reversing },
            new Lead { Id = "series", Type = LeadType.Series },
        ];

        var outlets = supplies.SelectMany(supply => supply.Outlets.Items.Select(outlet => new OutletRef(supply.Id, outlet.Id))).ToArray();
        var feeds = new List<Feed>();
        for (var count = outlets.Length == 0 || loads.Length == 0 ? 0 : Next(12); count > 0; count--)
        {
            var from = Enumerable.Range(0, Next(4) == 0 ? 1 + Next(3) : 1).Select(_ => outlets[Next(outlets.Length)]).Distinct().ToArray();
            var to = Enumerable.Range(0, 1 + Next(4)).Select(_ => loads[Next(loads.Length)].Id).Distinct(StringComparer.Ordinal).ToArray();
            feeds.Add(new Feed
            {
                From = [.. from],
                Joined = from.Length == 1 ? Joint.None : Next(2) == 0 ? Joint.Series : Joint.Parallel,
                Lead = Next(3) == 0 ? null : leads[Next(leads.Length)].Id,
                To = [.. to],
            });
        }

        return new Rig
        {
            Name = Name(0),
            Mains = Next(2) == 0 ? null : new RigMains(new Volts(230), new Frequency(50)),
            Headroom = headroom,
            Loads = [.. loads],
            Supplies = [.. supplies],
            Leads = [.. leads],
            Wired = feeds.Count == 0 && Next(2) == 0 ? null : new ValueList<Feed>([.. feeds]),
        };
    }

    public static string Escaped(string text)
    {
        var escaped = new StringBuilder();
        foreach (var character in text.Take(200))
            escaped.Append(character is >= ' ' and <= '~' ? character.ToString() : $"\\u{(int)character:X4}");
        return escaped.ToString();
    }
}
