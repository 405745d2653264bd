using System.Globalization;
using System.Text;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Files.PriceLists;

namespace Loadmark.Planning.Tests.Buying;

/// <summary>Small rigs with short price lists, the same for the same seed.</summary>
internal sealed class RandomShop
{
    private static readonly string[] LoadVolts = ["9V", "9V", "9V", "12V", "18V", "9-18V", "5V"];
    private static readonly string[] Modes =
    [
        "9 V DC 100 mA", "9 V DC 200 mA", "9 V DC 500 mA", "12 V DC 300 mA", "18 V DC 200 mA",
        "9 V DC 500 mA; 12 V DC 300 mA; 18 V DC 200 mA", "9-18 V DC 250 mA", "9 V AC 500 mA", "9.9 V DC 300 mA", "9 V DC 4 W", "9 V DC", "9 V AC 500 mA",
        "12 V DC 300 mA centre negative", "9 V DC 300 mA centre negative", "9 V DC 300 mA centre positive", "18 V DC 200 mA centre negative", "300 mA", "9 V 300 mA",
    ];

    private static readonly string[] PlainModes =
        ["9 V DC 200 mA", "9 V DC 500 mA", "9 V DC 300 mA centre positive", "18 V DC 300 mA", "4.5 V DC 300 mA", "9 V DC 4 W"];

    // Seeded and not for secrets: the same shop every time.
    private readonly Random _random;
    private readonly bool _withHubs;
    private readonly bool _withLeads;

    /// <summary>Makes one.</summary>
    /// <param name="seed">The same seed makes the same shop.</param>
    /// <param name="withHubs">Whether supplies that others must feed are on the list, and in half of the rigs.</param>
    /// <param name="withLeads">Whether leads are on the list, and loads that want them in the rig.</param>
    public RandomShop(int seed, bool withHubs = false, bool withLeads = false)
    {
        _withLeads = withLeads;
        _withHubs = withHubs;
        _random = new Random(seed);
        Text = WriteRig(seed);
        List = WriteList();
        Rig = Rigs.Read(Text);
        var reading = PriceListReader.Read(List, "list.csv");
        Offers = reading.Offers is { } offers ? [.. offers] : throw new InvalidOperationException(string.Join('\n', reading.Errors) + "\n" + List);
    }

    public string Text { get; }

    public string List { get; }

    public Rig Rig { get; }

    public Offer[] Offers { get; }

    private string WriteRig(int seed)
    {
        var text = new StringBuilder($"rig: Shop {seed}\nmains: 230 V 50 Hz\nloads:\n");
        var loads = _random.Next(1, _withHubs ? 3 : 4);
        for (var load = 1; load <= loads; load++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  L{load}: {{ label: \"{(Chance(40) ? "" : _withLeads && !Chance(6) ? "9V" : Pick(LoadVolts))} {(_withLeads ? 9 : _random.Next(16)) switch { 0 => "AC", < 3 => "AC/DC", 3 => "", _ => "DC" }}{(Chance(15) ? "" : $" {_random.Next(1, 9) * 30} mA")}\"");
            if (!Chance(5))
                text.Append(CultureInfo.InvariantCulture, $", polarity: centre {(Chance(_withLeads ? 3 : 8) ? "positive" : "negative")}");
            if (Chance(2))
                text.Append(CultureInfo.InvariantCulture, $", kind: {(Chance(2) ? "digital delay" : "analog drive")}");
            if (Chance(4))
                text.Append(CultureInfo.InvariantCulture, $", start: {_random.Next(1, 7) * 70} mA");
            if (Chance(12))
                text.Append(", ground: positive");
            if (Chance(_withLeads ? 5 : 15))
                text.Append(", plug: 5.5x2.5");
            text.Append(" }\n");
        }

        if (_withHubs && Chance(2))
            text.Append(CultureInfo.InvariantCulture, $"supplies:\n  hub: {{ label: \"{HubLabel()}\", isolated: {(Chance(2) ? "true" : "false")} }}\n");
        else if (Chance(2))
            text.Append(CultureInfo.InvariantCulture, $"supplies:\n  own:\n    isolated: {(Chance(2) ? "true" : "false")}\n    outlets: {{ 1{(Chance(3) ? "-2" : "")}: {{ label: {Pick(Modes)}{(Chance(6) ? ", surge: 600 mA" : "")} }} }}\n");
        var leads = new List<string>();
        if (Chance(3))
            leads.Add($"  chain: {{ type: daisy chain, plugs: {_random.Next(2, 4)} }}\n");
        if (Chance(4))
            leads.Add("  flip: { type: reversing }\n");
        if (Chance(6))
            leads.Add("  in line: { type: series }\n");
        if (Chance(6))
            leads.Add("  side by side: { type: parallel }\n");
        if (leads.Count > 0)
            text.Append("leads:\n").AppendJoin("", leads);
        return text.ToString();
    }

    private string WriteList()
    {
        var text = new StringBuilder("supply,price,mass_g,label,outlets,total,isolated,mains\n");
        var offers = _withHubs ? _random.Next(1, 4) : _withLeads ? _random.Next(2, 4) : _random.Next(3, 6);
        if (_withHubs)
            text.Append(CultureInfo.InvariantCulture, $"hub-to-buy,{_random.Next(1, 6)},200,{HubLabel()},,,{(Chance(2) ? "yes" : "no")},\n");
        for (var offer = 1; offer <= offers; offer++)
        {
            var first = PickMode();
            var outlets = _random.Next(1, 4) switch
            {
                1 => $"1: {first}",
                2 => $"1-2: {first}",
                _ => $"1: {first} | 2: {PickMode()}",
            };
            var price = Chance(25) ? "0" : $"{_random.Next(2, 12)}{(Chance(3) ? ".50" : "")}";
            var mass = Chance(5) ? "" : $"{_random.Next(1, 9) * 50}";
            var total = Chance(2) ? "" : Chance(2) ? $"{_random.Next(2, 8)} W" : $"{_random.Next(2, 8) * 100} mA";
            var mains = _random.Next(12) switch { 0 => "120 V", < 3 => "230 V 50 Hz", _ => "100-240 V" };
            text.Append(CultureInfo.InvariantCulture, $"S{offer},{price},{mass},,{outlets},{total},{(Chance(2) ? "yes" : "no")},{mains}\n");
        }

        return _withLeads ? WithLeads(text.ToString()) : text.ToString();
    }

    /// <summary>The list with one lead or two, of which there may be but few.</summary>
    private string WithLeads(string list)
    {
        var lines = list.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(static (line, place) => line + (place == 0 ? ",lead,type,plugs,plug,count" : ",,,,,")).ToList();
        var leads = _random.Next(1, 3);
        for (var lead = 1; lead <= leads; lead++)
        {
            var what = _random.Next(12) switch
            {
                < 4 => "reversing,,",
                < 7 => $"daisy chain,{_random.Next(2, 4)},",
                < 9 => "straight,,5.5x2.5",
                9 => "reversing,,5.5x2.5",
                10 => "series,,",
                _ => "parallel,,",
            };
            var price = Chance(8) ? "0" : $"{_random.Next(1, 6)}";
            lines.Insert(_random.Next(1, lines.Count + 1), $",{price},{(Chance(5) ? "" : $"{_random.Next(1, 4) * 20}")},,,,,,X{lead},{what},{(Chance(3) ? "1" : "")}");
        }

        return string.Join('\n', lines) + "\n";
    }

    /// <summary>A supply with a low-voltage input, which another supply here can give, or nearly.</summary>
    private string HubLabel() =>
        $"INPUT {Pick(["9V", "9V", "9V", "12V", "18V"])} DC {Pick(["150mA", "200mA"])} centre negative {_random.Next(1, 3)} OUTPUTS {Pick(["9V", "9V", "12V"])} DC {Pick(["100mA", "200mA"])} centre negative";

    /// <summary>A label; of most that leave the polarity out it says centre negative.</summary>
    private string PickMode()
    {
        var mode = _withLeads && !Chance(4) ? Pick(PlainModes) : Pick(Modes);
        var isSilent = mode.Contains("V DC", StringComparison.Ordinal) && !mode.Contains(';', StringComparison.Ordinal) && !mode.Contains("centre", StringComparison.Ordinal);
        return isSilent && !Chance(5) ? $"{mode} centre negative" : mode;
    }

    private bool Chance(int oneIn) => _random.Next(oneIn) == 0;

    private string Pick(string[] from) => from[_random.Next(from.Length)];
}
