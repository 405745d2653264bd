namespace Loadmark.Release.Packages;

/// <summary>A package as it was restored.</summary>
public sealed record RestoredPackage
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its version.</summary>
    public required string Version { get; init; }

    /// <summary>The SPDX expression of its licence; null where it names a file, an address or nothing.</summary>
    public required string? Licence { get; init; }

    /// <summary>What it says of its licence where that is no expression; null where it says nothing.</summary>
    public string? OtherLicence { get; init; }

    /// <summary>Its copyright line; null where it has none.</summary>
    public string? Copyright { get; init; }

    /// <summary>Where its source is; null where it does not say.</summary>
    public string? Source { get; init; }

    /// <summary>SHA-512 of the package's file, in hexadecimal digits.</summary>
    public required string Sha512 { get; init; }

    /// <summary>The packages that it needs.</summary>
    public IReadOnlyList<string> Needs { get; init; } = [];

    /// <summary>The files of it that go into a release and that no compiler of .NET made: native libraries, scripts, styles.</summary>
    public IReadOnlyList<string> ForeignFiles { get; init; } = [];

    /// <summary>Whether it is in a release; false of what only builds or tests.</summary>
    public bool IsShipped { get; init; }

    /// <summary>The folder that it was unpacked to.</summary>
    public required string Folder { get; init; }

    /// <summary>Its package URL, as bills of materials name it.</summary>
    public string Address => $"pkg:nuget/{Uri.EscapeDataString(Name)}@{Uri.EscapeDataString(Version)}";

    /// <summary>The files in which it tells of others' work that it holds, and of its own licence.</summary>
    public IEnumerable<string> Notices => !Directory.Exists(Folder) ? [] : Directory.EnumerateFiles(Folder)
        .Where(static file => Path.GetFileName(file) is var name && (Is(name, "THIRD-PARTY-NOTICES") || Is(name, "NOTICE") || Is(name, "LICENSE")))
        .Order(StringComparer.Ordinal);

    private static bool Is(string name, string stem) => Path.GetFileNameWithoutExtension(name).Equals(stem, StringComparison.OrdinalIgnoreCase);
}
