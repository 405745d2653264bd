using System.IO.Enumeration;
using System.Text.Json;

namespace Loadmark.Release.Packages;

/// <summary>Somebody's work within a package of somebody else, or the package's own, as <c>parts.json</c> tells it.</summary>
public sealed record Part
{
    private static readonly JsonSerializerOptions Reading = new(JsonSerializerDefaults.Web);

    /// <summary>The package of what the SDK puts into the program itself.</summary>
    public const string Program = "loadmark";

    /// <summary>The packages that it is in; the name may end with <c>*</c>. <see cref="Program"/> for the program itself.</summary>
    public required string Package { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its version; null where nothing in the package tells it.</summary>
    public string? Version { get; init; }

    /// <summary>What stands in its files and shows the version; null where the files' names show it, or there is none.</summary>
    public string? Told { get; init; }

    /// <summary>Whether it is the package's own work, under the package's licence.</summary>
    public bool Own { get; init; }

    /// <summary>The SPDX identifier of its licence; null where it is the package's own.</summary>
    public string? Licence { get; init; }

    /// <summary>Its copyright line; null where it is the package's own.</summary>
    public string? Copyright { get; init; }

    /// <summary>Where its source is; null where it is the package's own.</summary>
    public string? Source { get; init; }

    /// <summary>The names of the files that hold it; <c>*</c> stands for anything.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    /// <summary>The parts that are known.</summary>
    public static IReadOnlyList<Part> Known { get; } = ReadKnown();

    /// <summary>Whether it is in the program itself, and in no package.</summary>
    public bool IsOfProgram => Package == Program;

    /// <summary>Whether it may be in a package.</summary>
    public bool IsIn(RestoredPackage package) => FileSystemName.MatchesSimpleExpression(Package, package.Name, ignoreCase: true);

    /// <summary>Whether a file of the package holds it.</summary>
    /// <param name="file">The file's path within the package.</param>
    public bool Holds(string file) => Files.Any(pattern => FileSystemName.MatchesSimpleExpression(pattern, Path.GetFileName(file), ignoreCase: false));

    private static Part[] ReadKnown()
    {
        using var stream = typeof(Part).Assembly.GetManifestResourceStream("parts.json")!;
        return JsonSerializer.Deserialize<Part[]>(stream, Reading)!;
    }
}
