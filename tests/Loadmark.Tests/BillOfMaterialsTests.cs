using System.Text.Json.Nodes;
using Loadmark.Release;
using NJsonSchema;

namespace Loadmark.Tests;

/// <summary>The bill of materials of a release against the published schema of CycloneDX 1.6 (ECMA-424).</summary>
public sealed class BillOfMaterialsTests
{
    private static readonly Task<JsonSchema> Published = JsonSchema.FromFileAsync(
        Repository.PathOf("tests", "Loadmark.Tests", "CycloneDx", "bom-1.6.SNAPSHOT.schema.json"));

    private static string Text => File.ReadAllText(Repository.PathOf(BillOfMaterials.FileName));

    [Fact]
    public async Task Is_as_the_standard_says() => Assert.Empty((await Published).Validate(Text));

    /// <summary>The validator sees what is wrong, so that its silence counts.</summary>
    [Fact]
    public async Task Is_refused_by_the_schema_once_it_is_spoilt()
    {
        var schema = await Published;
        foreach (var (good, bad) in ((string, string)[])[("\"CycloneDX\"", "\"Cyclone\""), ("\"library\"", "\"libary\""), ("\"id\": \"MIT\"", "\"id\": \"MITT\""), ("\"SHA-512\"", "\"SHA-5\"")])
            Assert.NotEmpty(schema.Validate(Text.Replace(good, bad, StringComparison.Ordinal)));
    }

    /// <summary>What the schema cannot say: every name is given once, and every reference leads to one.</summary>
    [Fact]
    public void Every_reference_leads_to_a_component()
    {
        var bill = JsonNode.Parse(Text)!;
        var components = bill["components"]!.AsArray().SelectMany(static one => (IEnumerable<JsonNode>)[one!, .. one!["components"]?.AsArray().Select(static part => part!) ?? []]).ToList();
        var names = components.Append(bill["metadata"]!["component"]!).Select(static one => (string)one["bom-ref"]!).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
        Assert.True(names.Count > 60);
        foreach (var one in bill["dependencies"]!.AsArray())
            Assert.All(one!["dependsOn"]!.AsArray().Append(one["ref"]).Select(static reference => (string)reference!), reference => Assert.Contains(reference, names));
    }

    /// <summary>Nothing in it is of the moment or of the machine.</summary>
    [Fact]
    public void Has_no_time_no_serial_number_and_no_folder()
    {
        Assert.DoesNotContain("timestamp", Text, StringComparison.Ordinal);
        Assert.DoesNotContain("serialNumber", Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Repository.Root, Text, StringComparison.Ordinal);
    }
}
