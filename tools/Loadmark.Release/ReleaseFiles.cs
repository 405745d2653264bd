using System.Text;
using System.Xml.Linq;

namespace Loadmark.Release;

/// <summary>The files that are made from the packages and kept in the repository.</summary>
public static class ReleaseFiles
{
    /// <summary>The name of the notices.</summary>
    public const string Notices = "THIRD-PARTY-NOTICES.txt";

    private const string Table = "docs/licences.md";

    /// <summary>Makes the files, without writing them.</summary>
    /// <param name="root">The clone's root.</param>
    /// <param name="inventory">What was restored.</param>
    /// <returns>The text of each file, by its path from the root.</returns>
    public static IReadOnlyDictionary<string, string> Make(string root, Inventory inventory) => new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [Notices] = NoticesText.Of(inventory),
        [BillOfMaterials.FileName] = BillOfMaterials.Of(inventory, VersionOf(root), DirectOf(root)),
        [Table] = TableOf(inventory),
    };

    /// <summary>The packages that the projects of the program refer to, and the one of scripts that the SDK adds.</summary>
    private static HashSet<string> DirectOf(string root) => new(
        Directory.EnumerateFiles(Path.Combine(root, "src"), "*.csproj", SearchOption.AllDirectories)
            .SelectMany(static file => XDocument.Load(file).Descendants("PackageReference")).Select(static one => one.Attribute("Include")!.Value)
            .Append("Microsoft.AspNetCore.App.Internal.Assets"),
        StringComparer.OrdinalIgnoreCase);

    private static string VersionOf(string root) =>
        XDocument.Load(Path.Combine(root, "Directory.Build.props")).Descendants("Version").Single().Value;

    private static string TableOf(Inventory inventory)
    {
        var text = new StringBuilder();
        text.Append("""
            # Licences

            Every package that is restored, its own and those that it needs, made by `tools/Loadmark.Release` and not edited. What a release holds is in
            [THIRD-PARTY-NOTICES.txt](../THIRD-PARTY-NOTICES.txt), with the native libraries and the texts; why each package is here, in [dependencies](dependencies.md).

            | package | version | licence | in a release |
            | --- | --- | --- | --- |

            """.ReplaceLineEndings("\n"));
        foreach (var package in inventory.Packages)
            text.Append("| ").Append(package.Name).Append(" | ").Append(package.Version).Append(" | ").Append(package.Licence).Append(" | ").Append(package.IsShipped ? "yes" : "").Append(" |\n");
        return text.ToString();
    }
}
