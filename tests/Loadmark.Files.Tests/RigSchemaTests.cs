using System.Runtime.CompilerServices;
using Loadmark.Files.Keys;
using NJsonSchema;

namespace Loadmark.Files.Tests;

public sealed class RigSchemaTests
{
    private static readonly string Root = FindRoot();

    [Fact]
    public void The_schema_in_the_repository_is_the_one_the_table_of_keys_makes()
    {
        var path = Path.Combine(Root, "schema", "rig.schema.json");
        if (Environment.GetEnvironmentVariable("LOADMARK_UPDATE_EXPECTED") is not null)
            File.WriteAllText(path, RigSchema.Write());
        Assert.True(File.ReadAllText(path) == RigSchema.Write(), "schema/rig.schema.json is out of date: run this test with LOADMARK_UPDATE_EXPECTED set.");
    }

    [Fact]
    public void The_reference_for_users_has_every_key()
    {
        var page = File.ReadAllText(Path.Combine(Root, "docs", "rig-file.md"));
        foreach (var table in (KeyTable[])[RigKeys.Rig, .. RigKeys.Groups])
        {
            foreach (var key in table.Keys)
                Assert.Contains($"| `{key.Name}` |", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Takes_the_examples_and_the_pit_rig()
    {
        var schema = await JsonSchema.FromJsonAsync(RigSchema.Write(), TestContext.Current.CancellationToken);
        var examples = Path.Combine(Root, "examples");
        var files = Directory.Exists(examples) ? Directory.GetFiles(examples, "*.rig.yaml") : [];
        foreach (var text in files.Select(File.ReadAllText).Append(Fixtures.Pit).Append(Fixtures.Json).Append(RigFileWriter.Write(Fixtures.Read(Fixtures.Pit))))
        {
            Fixtures.Read(text);
            var faults = schema.Validate(YamlToJson.Convert(text));
            Assert.True(faults.Count == 0, $"{string.Join('\n', faults)}\n{text}");
        }
    }

    [Theory]
    [InlineData("loads: {}")]
    [InlineData("rig: a\nload: {}")]
    [InlineData("rig: a\nloads: { x: { isolat: yes } }")]
    [InlineData("rig: a\nloads: { x: { run: 300 } }")]
    [InlineData("rig: a\nloads: { x: { run: '300' } }")]
    [InlineData("rig: a\nloads: { x: { polarity: left } }")]
    [InlineData("rig: a\nloads: { x: { priority: 4 } }")]
    [InlineData("rig: a\nheadroom: 10")]
    [InlineData("rig: a\nheadroom: 100 %")]
    [InlineData("rig: a\nsupplies: { b: {} }")]
    [InlineData("rig: a\nsupplies: { b: }")]
    [InlineData("rig: a\nloads: { x: [9 V] }")]
    [InlineData("rig: a\nsupplies: { b: { outlets: {} } }")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1: { lable: x } } } }")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1: }, banks: { left: } } }")]
    [InlineData("rig: a\nleads: { x: { type: long } }")]
    [InlineData("rig: a\nwired: [{ from: a/1 }]")]
    [InlineData("rig: a\nwired: [{ from: [], to: x }]")]
    [InlineData("rig: a\nsignal: amp")]
    public async Task Refuses_what_the_reader_refuses(string text)
    {
        var schema = await JsonSchema.FromJsonAsync(RigSchema.Write(), TestContext.Current.CancellationToken);
        Assert.NotEmpty(schema.Validate(YamlToJson.Convert(text)));
        Assert.NotEmpty(RigFileReader.Read(text, "f").Errors);
    }

    [Theory]
    [InlineData("rig: a\nheadroom: 12,5 percent")]
    [InlineData("rig: a\nheadroom: 0.1")]
    [InlineData("rig: a\nloads: { x: 9V DC 12mA, y: }\nsupplies: { b: 9V 2A, c: { label: 9V 2A, isolated: yes } }")]
    [InlineData("rig: 2026\nloads: { x: , y: { isolate: on, label: 12, input_capacitance: .5 µF } }")]
    [InlineData("rig: a\nleads: { x: { wire: AWG 24 }, y: { wire: 24 AWG, ohms: '0,02 Ω' } }")]
    [InlineData("rig: a\nsupplies: { b: { outlets: { 1-2: , 3: { bank: l } }, banks: { l: 1 A } } }\nwired: ")]
    public async Task Takes_what_the_reader_takes(string text)
    {
        var schema = await JsonSchema.FromJsonAsync(RigSchema.Write(), TestContext.Current.CancellationToken);
        Assert.Empty(schema.Validate(YamlToJson.Convert(text)));
        Fixtures.Read(text);
    }

    private static string FindRoot([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
