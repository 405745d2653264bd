using System.Text.Json;

namespace Loadmark.Tests;

/// <summary>The buy command on real files.</summary>
public sealed class BuyCommandTests : IDisposable
{
    private const string Rig =
        """
        rig: Two pedals
        mains: 230 V 50 Hz
        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative" }
          delay-2: { kind: digital, label: "9V DC 300mA centre negative" }
        supplies: {}
        """;

    private const string Prices =
        """
        supply;price;mass_g;label;outlets;total;isolated;mains
        small;10,50;100;;1: 9 V DC 100 mA centre negative;;yes;100-240 V
        large;30,00;300;;1: 9 V DC 400 mA centre negative;;yes;100-240 V
        both;35,00;350;;1: 9 V DC 100 mA | 2: 9 V DC 400 mA;;yes;100-240 V
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-buy-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_cheapest_comes_first_with_its_wiring()
    {
        using var json = JsonDocument.Parse(Run(0, "buy", Save("board.rig.yaml", Rig), "--prices", Save("list.csv", Prices), "--json"));
        Assert.Equal("optimal", json.RootElement.GetProperty("status").GetString());
        var cheapest = json.RootElement.GetProperty("options")[0];
        Assert.Equal(35m, cheapest.GetProperty("price").GetDecimal());
        Assert.Equal("both", cheapest.GetProperty("buy")[0].GetProperty("supply").GetString());
        Assert.Equal(0.35m, cheapest.GetProperty("buy")[0].GetProperty("massKilograms").GetDecimal());
        Assert.Equal("optimal", cheapest.GetProperty("plan").GetProperty("status").GetString());
        Assert.Empty(cheapest.GetProperty("plan").GetProperty("unfed").EnumerateArray());
    }

    [Fact]
    public void The_cheapest_that_is_quiet_is_listed_though_it_is_dear()
    {
        var rig = Save("board.rig.yaml", Rig.Replace("analog drive", "digital", StringComparison.Ordinal));
        var list = Save("list.csv", "supply,price,outlets\ntwin,20,1-2: 9 V DC 400 mA centre negative\n");
        var text = Run(0, "buy", rig, "--prices", list);
        Assert.Contains("Cheapest: 1 (of all, proven).", text, StringComparison.Ordinal);
        Assert.Contains("Cheapest that is quiet: 2 (of all, proven).", text, StringComparison.Ordinal);
        Assert.Contains("Of the cheapest that is quiet this need not hold.", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run(0, "buy", rig, "--prices", list, "--json"));
        Assert.Equal(("optimal", 40m), (json.RootElement.GetProperty("quietStatus").GetString(), json.RootElement.GetProperty("quietPriceBound").GetDecimal()));
        Assert.Equal([(20m, false), (40m, true)], json.RootElement.GetProperty("options").EnumerateArray().Select(static option => (option.GetProperty("price").GetDecimal(), option.GetProperty("quiet").GetBoolean())));
    }

    [Fact]
    public void Leads_to_buy_are_said_and_priced()
    {
        var rig = Save("board.rig.yaml", Rig.Replace("centre negative", "centre positive", StringComparison.Ordinal));
        var list = Save("list.csv", "supply,price,mass_g,outlets,isolated,lead,type\nboth,35,350,1: 9 V DC 100 mA centre negative | 2: 9 V DC 400 mA centre negative,yes,,\n,4,20,,,flip,reversing\n");
        var text = Run(0, "buy", rig, "--prices", list);
        Assert.Contains("Its wiring needs leads that are to buy: 2 reversing leads.", text, StringComparison.Ordinal);
        Assert.Contains("Price 43.00, mass 390 g", text, StringComparison.Ordinal);
        Assert.Contains("over flip (to buy)", text, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run(0, "buy", rig, "--prices", list, "--json"));
        var option = json.RootElement.GetProperty("options")[0];
        var lead = option.GetProperty("leads")[0];
        Assert.Equal(("flip", "reversing lead", 2, 4m), (lead.GetProperty("lead").GetString(), lead.GetProperty("type").GetString(), lead.GetProperty("count").GetInt32(), lead.GetProperty("price").GetDecimal()));
        Assert.Equal("both", Assert.Single(option.GetProperty("buy").EnumerateArray()).GetProperty("supply").GetString());
        using var none = JsonDocument.Parse(Run(0, "buy", Save("board.rig.yaml", Rig), "--prices", Save("list.csv", Prices), "--json"));
        Assert.False(none.RootElement.GetProperty("options")[0].TryGetProperty("leads", out _));
    }

    [Fact]
    public void Room_for_a_pedal_to_come_is_paid_for()
    {
        var text = Run(0, "buy", Save("board.rig.yaml", Rig), "--prices", Save("list.csv", Prices), "--room", "9 V 300 mA");
        Assert.Contains("Price 65.00", text, StringComparison.Ordinal);
        Assert.Contains("room 1", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Straight_leads_without_a_count_are_there_as_often_as_they_are_wanted()
    {
        var loads = string.Join(", ", Enumerable.Range(1, 8).Select(static load => $"L{load}: {{ label: 9 V DC 20 mA }}"));
        var rig = Save("split.rig.yaml", $"rig: Split\nloads: {{ {loads} }}\nsupplies: {{}}\nleads: {{ split: {{ type: straight, plugs: 2 }} }}\n");
        var list = Save("list.csv", "supply,price,mass_g,label,outlets,total,isolated,mains\none,10,100,,1: 9 V DC 100 mA centre negative,,yes,\nsix,45,100,,1-6: 9 V DC 100 mA centre negative,,yes,\n");
        using var json = JsonDocument.Parse(Run(0, "buy", rig, "--prices", list, "--json"));
        Assert.Equal("optimal", json.RootElement.GetProperty("status").GetString());
        Assert.Equal(40m, json.RootElement.GetProperty("options")[0].GetProperty("price").GetDecimal());
    }

    [Fact]
    public void Nothing_on_the_list_is_an_answer()
    {
        var text = Run(1, "buy", Save("board.rig.yaml", Rig.Replace("300mA", "900mA", StringComparison.Ordinal)), "--prices", Save("list.csv", Prices));
        Assert.Contains("delay-2", text, StringComparison.Ordinal);
        Assert.Contains("Nothing on the list feeds every load: proven, as far as the list tells.", text.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("10,50;100", "cheap;100")]
    [InlineData("supply;price", "supply;cost")]
    [InlineData("9 V DC 100 mA | 2", "9 V DC 100 mA | 1")]
    public void A_list_that_cannot_be_read_is_refused_whole(string from, string to) =>
        Run(2, "buy", Save("board.rig.yaml", Rig), "--prices", Save("list.csv", Prices.Replace(from, to, StringComparison.Ordinal)));

    [Fact]
    public void A_list_is_needed() => Run(2, "buy", Save("board.rig.yaml", Rig));

    [Fact]
    public void Room_must_tell_volts_and_amps() =>
        Run(2, "buy", Save("board.rig.yaml", Rig), "--prices", Save("list.csv", Prices), "--room", "a pedal");

    private string Save(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static string Run(int code, params string[] args)
    {
        var (exit, output) = ProgramRun.WithFiles(args);
        Assert.Equal(code, exit);
        return output;
    }
}
