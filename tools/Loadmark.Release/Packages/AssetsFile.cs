using System.Text.Json;
using System.Xml.Linq;

namespace Loadmark.Release.Packages;

/// <summary>What was restored for a project, from the file in which the SDK writes it down.</summary>
public static class AssetsFile
{
    private const string Framework = "net10.0";
    private const string Nothing = "_._";

    /// <summary>Folders of packages whose files are served to browsers.</summary>
    private static readonly string[] Served = ["staticwebassets/", "_framework/"];

    /// <summary>Reads the packages of a project, its own and those that they need.</summary>
    /// <param name="path">The path of <c>project.assets.json</c>.</param>
    /// <exception cref="FileNotFoundException">Nothing was restored.</exception>
    public static IReadOnlyList<RestoredPackage> Read(string path)
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(path));
        var root = document.RootElement;
        var folders = root.GetProperty("packageFolders").EnumerateObject().Select(static one => one.Name).ToList();
        var libraries = root.GetProperty("libraries");
        var entries = root.GetProperty("targets").GetProperty(Framework).EnumerateObject().ToDictionary(
            static one => one.Name.Split('/')[0], static one => one, StringComparer.OrdinalIgnoreCase);
        var shipped = ShippedOf(root, entries);
        return
        [
            .. entries.Values.Where(static entry => entry.Value.GetProperty("type").GetString() == "package").Select(entry =>
            {
                var library = libraries.GetProperty(entry.Name);
                var served = FilesOf(library).Where(static file => Served.Any(folder => file.StartsWith(folder, StringComparison.Ordinal))).ToList();
                var name = entry.Name.Split('/')[0];
                return PackageOf(entry, library, folders) with
                {
                    IsShipped = shipped.Contains(name) || served.Count > 0,
                    ForeignFiles = [.. Names(entry.Value, "native").Concat(Names(entry.Value, "runtimeTargets")).Concat(served).Order(StringComparer.Ordinal)],
                };
            }).OrderBy(static package => package.Name, StringComparer.OrdinalIgnoreCase),
        ];
    }

    /// <summary>What is needed by the project or by a project that it refers to; what is marked as private only builds.</summary>
    private static HashSet<string> ShippedOf(JsonElement root, Dictionary<string, JsonProperty> entries)
    {
        var direct = root.GetProperty("project").GetProperty("frameworks").GetProperty(Framework);
        var open = new Queue<string>(entries.Values.Where(static entry => entry.Value.GetProperty("type").GetString() == "project").Select(static entry => entry.Name.Split('/')[0]));
        if (direct.TryGetProperty("dependencies", out var dependencies))
        {
            foreach (var one in dependencies.EnumerateObject().Where(static one => !(one.Value.TryGetProperty("suppressParent", out var parent) && parent.GetString() == "All")))
                open.Enqueue(one.Name);
        }

        var found = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        while (open.TryDequeue(out var name))
        {
            if (!found.Add(name) || !entries.TryGetValue(name, out var entry))
                continue;
            foreach (var next in Names(entry.Value, "dependencies"))
                open.Enqueue(next);
        }

        return found;
    }

    private static RestoredPackage PackageOf(JsonProperty entry, JsonElement library, List<string> folders)
    {
        var below = library.GetProperty("path").GetString()!;
        var folder = folders.Select(folder => Path.Combine(folder, below)).FirstOrDefault(Directory.Exists)
            ?? throw new DirectoryNotFoundException($"The package {entry.Name} is not where it was restored to. Run: dotnet restore");
        var data = XDocument.Load(Directory.EnumerateFiles(folder, "*.nuspec").Single()).Root!.Elements().First(static one => one.Name.LocalName == "metadata");
        XElement? Of(string name) => data.Elements().FirstOrDefault(one => one.Name.LocalName == name);
        var licence = Of("license");
        var isExpression = licence?.Attribute("type")?.Value == "expression";
        var parts = entry.Name.Split('/');
        return new RestoredPackage
        {
            Name = parts[0],
            Version = parts[1],
            Licence = isExpression ? licence!.Value.Trim() : null,
            OtherLicence = isExpression ? null : licence is not null ? $"the file {licence.Value}" : Of("licenseUrl")?.Value,
            Copyright = Of("copyright")?.Value.Trim() is { Length: > 0 } copyright ? copyright : Of("authors")?.Value.Trim(),
            Source = Of("repository")?.Attribute("url")?.Value ?? Of("projectUrl")?.Value,
            Sha512 = Convert.ToHexStringLower(Convert.FromBase64String(File.ReadAllText(Directory.EnumerateFiles(folder, "*.nupkg.sha512").Single()).Trim())),
            Needs = [.. Names(entry.Value, "dependencies").Order(StringComparer.Ordinal)],
            Folder = folder,
        };
    }

    private static IEnumerable<string> FilesOf(JsonElement library) => library.GetProperty("files").EnumerateArray().Select(static one => one.GetString()!);

    private static IEnumerable<string> Names(JsonElement entry, string of) =>
        entry.TryGetProperty(of, out var list) ? list.EnumerateObject().Select(static one => one.Name).Where(static name => !name.EndsWith(Nothing, StringComparison.Ordinal)) : [];
}
