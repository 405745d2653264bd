using System.Text;
using System.Text.Json;
using Loadmark.Answers;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Files.Errors;
using Loadmark.Shapes;
using Loadmark.Terminal;

namespace Loadmark.Tests;

public sealed class JsonTests
{
    [Fact]
    public void A_check() => Expected.Matches("check-pit.json", Indented(new ProgramRun().With("a.yaml", DemoResults.Pit).Run("check", "--json", "a.yaml").Output));

    [Fact]
    public void Several_checks_are_an_array_in_the_order_asked()
    {
        var answer = new ProgramRun()
            .With("clean.yaml", DemoResults.Clean)
            .With("typo.yaml", new FileError("@", 12, 3, "No such word.") { Found = "isolatd", Expected = "a word of an outlet", Suggestion = "isolated" })
            .With("fly.yaml", DemoResults.Quiet)
            .Run("check", "clean.yaml", "typo.yaml", "fly.yaml", "--json");
        Assert.Equal(2, answer.Code);
        Assert.Equal("typo.yaml:12:3: No such word.\n", answer.Error);
        Expected.Matches("check-several.json", Indented(answer.Output));
    }

    [Fact]
    public void The_keys_of_the_contract_come_first_and_in_order()
    {
        using var answer = JsonDocument.Parse(new ProgramRun().With("a.yaml", DemoResults.Pit).Run("check", "a.yaml", "--json").Output);
        Assert.Equal(["rig", "verdict", "findings", "outlets", "totals", "headroom", "headroomIsDefault", "untold", "file", "questions", "toBuy"], Keys(answer.RootElement));
        Assert.Equal(["rule", "severity", "subjects", "message", "working", "remedy", "source"], Keys(answer.RootElement.GetProperty("findings")[0]));
        Assert.Equal(["outlet", "volts", "limitAmps", "runAmps", "startAmps", "loads"], Keys(answer.RootElement.GetProperty("outlets")[0]));
        Assert.Equal(["rule", "subjects", "because"], Keys(answer.RootElement.GetProperty("untold")[0]));
    }

    [Fact]
    public void A_reading() => Expected.Matches("read-everything.json", Indented(Json(DemoNameplates.Everything)));

    [Fact]
    public void An_unclear_reading() => Expected.Matches("read-unclear.json", Indented(Json(DemoNameplates.Unclear)));

    [Fact]
    public void A_reading_of_several_outlets() => Expected.Matches("read-outlets.json", Indented(Json(NameplateReader.Read(DemoNameplates.Outlets))));

    [Fact]
    public void The_keys_of_a_reading()
    {
        using var answer = JsonDocument.Parse(Json(DemoNameplates.Everything));
        Assert.Equal(["supply", "modes", "polarity", "plug", "mains", "input", "outlets", "total", "derived", "conflicts", "unread", "ground", "isolated", "eachOutlet", "notUnderstood", "fields", "unreadAt"], Keys(answer.RootElement));
        Assert.Equal(["supply", "volts", "amps", "watts", "polarity", "plug", "ground", "input", "mains"], Keys(answer.RootElement.GetProperty("fields")));
    }

    [Fact]
    public void A_reading_of_nothing_is_null_and_empty() =>
        Assert.StartsWith(
            """{"supply":null,"modes":[],"polarity":null,"plug":null,"mains":null,"input":null,"outlets":null,"total":null,"derived":[],"conflicts":[],"unread":[],"ground":null,"isolated":null,"eachOutlet":false,"notUnderstood":[],"fields":{"supply":{"state":"absent","at":null,"candidates":[]},""",
            Json(new Nameplate("")),
            StringComparison.Ordinal);

    [Theory]
    [InlineData("0.30", "0.3")]
    [InlineData("9.000", "9")]
    [InlineData("0.3333333333333333333", "0.333333333")]
    [InlineData("0.0000000001", "0")]
    [InlineData("0.00000001", "0.00000001")]
    [InlineData("1000", "1000")]
    public void Figures_are_plain_decimals(string value, string written)
    {
        using var output = new MemoryStream();
        using (var json = new Utf8JsonWriter(output))
            json.WriteFigure(decimal.Parse(value));
        Assert.Equal(written, Encoding.UTF8.GetString(output.ToArray()));
    }

    [Fact]
    public void A_hostile_rig_makes_sound_JSON()
    {
        var answer = new ProgramRun().With("a.yaml", DemoResults.Hostile).Run("check", "--json", "a.yaml");
        Assert.DoesNotContain(answer.Output, character => character != '\n' && char.IsControl(character));
        using var parsed = JsonDocument.Parse(answer.Output);
        Assert.Equal("[a]/\u001bb", parsed.RootElement.GetProperty("outlets")[0].GetProperty("outlet").GetString());
    }

    [Fact]
    public void Letters_that_need_no_escape_get_none() =>
        Assert.Contains("«prüf» ok", Json(DemoNameplates.Everything), StringComparison.Ordinal);

    [Fact]
    public void Every_value_has_a_word_of_its_own()
    {
        AssertDistinct(Enum.GetValues<Severity>().Select(JsonWords.Of));
        AssertDistinct(Enum.GetValues<SupplyForm>().Select(JsonWords.Of));
        AssertDistinct(Enum.GetValues<Polarity>().Select(JsonWords.Of));
        AssertDistinct(Enum.GetValues<FieldState>().Select(JsonWords.Of));
        AssertDistinct(Enum.GetValues<Severity>().Select(severity => SeverityLook.Of(severity).Sign));
        AssertDistinct(Enum.GetValues<Severity>().Select(severity => SeverityLook.Of(severity).AsciiSign));
        Assert.All(Enum.GetValues<Severity>(), severity => Assert.Equal(JsonWords.Of(severity), SeverityLook.Of(severity).Word));
        Assert.Equal(Enum.GetValues<Severity>().OrderDescending(), SeverityLook.WorstFirst.ToArray());
    }

    private static void AssertDistinct(IEnumerable<string> words) => Assert.Distinct(words);

    private static List<string> Keys(JsonElement element) => [.. element.EnumerateObject().Select(property => property.Name)];

    private static string Json(Nameplate nameplate)
    {
        using var output = new MemoryStream();
        using (var json = new Utf8JsonWriter(output, JsonFormat.Options))
            NameplateJson.Reading.Write(json, nameplate);
        return Encoding.UTF8.GetString(output.ToArray());
    }

    /// <summary>The same JSON on many lines, so that a difference can be read.</summary>
    private static string Indented(string json)
    {
        using var parsed = JsonDocument.Parse(json);
        using var output = new MemoryStream();
        using (var writer = new Utf8JsonWriter(output, JsonFormat.Options with { Indented = true, NewLine = "\n" }))
            parsed.WriteTo(writer);
        return Encoding.UTF8.GetString(output.ToArray()) + "\n";
    }
}
