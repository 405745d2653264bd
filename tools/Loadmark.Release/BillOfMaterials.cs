using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Loadmark.Release.Packages;

namespace Loadmark.Release;

/// <summary>
/// The bill of materials of a release, as CycloneDX 1.6. It has no serial number and no time, so that the same packages give the same bytes.
/// </summary>
/// <remarks>Source: CycloneDX 1.6, ECMA-424; package URLs: the purl specification, type nuget.</remarks>
public static class BillOfMaterials
{
    /// <summary>The name of the file.</summary>
    public const string FileName = "loadmark.cdx.json";

    private const string Program = "loadmark";

    /// <summary>The whole text.</summary>
    /// <param name="inventory">What the release holds; nothing stands against it.</param>
    /// <param name="version">The program's version.</param>
    /// <param name="direct">The names of the packages that the program's projects refer to.</param>
    public static string Of(Inventory inventory, string version, IReadOnlySet<string> direct)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "http://cyclonedx.org/schema/bom-1.6.schema.json");
            json.WriteString("bomFormat", "CycloneDX");
            json.WriteString("specVersion", "1.6");
            json.WriteNumber("version", 1);
            json.WriteStartObject("metadata");
            json.WriteStartObject("component");
            WriteHead(json, "application", Program, version, Program);
            WriteLicence(json, "MIT");
            json.WriteEndObject();
            json.WriteEndObject();
            json.WriteStartArray("components");
            foreach (var package in inventory.Shipped)
                WritePackage(json, package, [.. inventory.Parts.Where(part => !part.Own && part.IsIn(package))]);
            foreach (var part in inventory.Parts.Where(static one => one.IsOfProgram))
                WritePart(json, part, Program);
            json.WriteEndArray();
            WriteDependencies(json, inventory, direct);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    private static void WritePackage(Utf8JsonWriter json, RestoredPackage package, List<Part> parts)
    {
        json.WriteStartObject();
        WriteHead(json, "library", package.Name, package.Version, package.Address);
        json.WriteStartArray("hashes");
        json.WriteStartObject();
        json.WriteString("alg", "SHA-512");
        json.WriteString("content", package.Sha512);
        json.WriteEndObject();
        json.WriteEndArray();
        WriteLicence(json, package.Licence!);
        if (package.Copyright is { } copyright)
            json.WriteString("copyright", copyright);
        json.WriteString("purl", package.Address);
        WriteSource(json, package.Source);
        if (parts.Count > 0)
        {
            json.WriteStartArray("components");
            foreach (var part in parts)
                WritePart(json, part, package.Address);
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, Part part, string within)
    {
        json.WriteStartObject();
        WriteHead(json, "library", part.Name, part.Version, $"{within}#{part.Name}");
        WriteLicence(json, part.Licence!);
        json.WriteString("copyright", part.Copyright);
        WriteSource(json, part.Source);
        json.WriteEndObject();
    }

    private static void WriteHead(Utf8JsonWriter json, string type, string name, string? version, string reference)
    {
        json.WriteString("type", type);
        json.WriteString("bom-ref", reference);
        json.WriteString("name", name);
        if (version is not null)
            json.WriteString("version", version);
    }

    /// <summary>One identifier, or an expression where there are several.</summary>
    private static void WriteLicence(Utf8JsonWriter json, string licence)
    {
        json.WriteStartArray("licenses");
        json.WriteStartObject();
        if (licence.Contains(' ', StringComparison.Ordinal))
        {
            json.WriteString("expression", licence);
        }
        else
        {
            json.WriteStartObject("license");
            json.WriteString("id", licence);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteSource(Utf8JsonWriter json, string? source)
    {
        if (source is null)
            return;
        json.WriteStartArray("externalReferences");
        json.WriteStartObject();
        json.WriteString("type", "vcs");
        json.WriteString("url", source);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteDependencies(Utf8JsonWriter json, Inventory inventory, IReadOnlySet<string> direct)
    {
        var addresses = inventory.Shipped.ToDictionary(static one => one.Name, static one => one.Address, StringComparer.OrdinalIgnoreCase);
        json.WriteStartArray("dependencies");
        Write(Program, addresses.Where(one => direct.Contains(one.Key)).Select(static one => one.Value));
        foreach (var package in inventory.Shipped)
            Write(package.Address, package.Needs.Where(addresses.ContainsKey).Select(need => addresses[need]));
        json.WriteEndArray();

        void Write(string reference, IEnumerable<string> needs)
        {
            json.WriteStartObject();
            json.WriteString("ref", reference);
            json.WriteStartArray("dependsOn");
            foreach (var need in needs.Order(StringComparer.OrdinalIgnoreCase))
                json.WriteStringValue(need);
            json.WriteEndArray();
            json.WriteEndObject();
        }
    }
}
