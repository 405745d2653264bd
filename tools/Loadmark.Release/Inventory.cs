using System.Text;
using Loadmark.Release.Licences;
using Loadmark.Release.Packages;

namespace Loadmark.Release;

/// <summary>What a release holds of others' work, and what stands against it.</summary>
public sealed class Inventory
{
    private static readonly string[] Rooms = ["src", "tests", "bench", "tools"];

    private readonly List<string> _faults = [];

    /// <summary>Takes stock.</summary>
    /// <param name="packages">The packages, shipped and not.</param>
    /// <param name="parts">The parts within them that are known.</param>
    public Inventory(IEnumerable<RestoredPackage> packages, IReadOnlyList<Part> parts)
    {
        Packages = [.. packages.GroupBy(static one => one.Address).Select(static same => same.FirstOrDefault(static one => one.IsShipped) ?? same.First())
            .OrderBy(static one => one.Address, StringComparer.OrdinalIgnoreCase)];
        foreach (var package in Packages)
            CheckLicence(package);
        foreach (var package in Shipped)
            CheckFiles(package, [.. parts.Where(part => part.IsIn(package))]);
        Parts = [.. parts.Where(part => part.IsOfProgram || Shipped.Any(part.IsIn))];
        foreach (var part in Parts)
            CheckPart(part);
    }

    /// <summary>All packages, by name.</summary>
    public IReadOnlyList<RestoredPackage> Packages { get; }

    /// <summary>Those that are in a release.</summary>
    public IEnumerable<RestoredPackage> Shipped => Packages.Where(static one => one.IsShipped);

    /// <summary>The parts within those.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>What stands against a release, each with what to do; empty for nothing.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>The licences that a package is taken under.</summary>
    public static IReadOnlyList<string> LicencesOf(RestoredPackage package) =>
        package.Licence is { } licence ? LicenceExpression.Choose(licence, Allowed(package.IsShipped)) ?? [] : [];

    /// <summary>Reads what was restored for the program, for its tests and for what builds it.</summary>
    /// <param name="root">The clone's root.</param>
    public static Inventory Of(string root)
    {
        var program = Path.Combine(root, "src", "Loadmark", "obj", "project.assets.json");
        var others = Rooms.SelectMany(folder => Directory.EnumerateDirectories(Path.Combine(root, folder)))
            .Select(static project => Path.Combine(project, "obj", "project.assets.json")).Where(path => File.Exists(path) && path != program);
        return new Inventory(
            AssetsFile.Read(program).Concat(others.SelectMany(AssetsFile.Read).Select(static one => one with { IsShipped = false })), Part.Known);
    }

    private static Func<string, bool> Allowed(bool isShipped) => isShipped ? AllowedLicences.Shipped.ContainsKey : AllowedLicences.InHouse.Contains;

    private void CheckLicence(RestoredPackage package)
    {
        var what = $"{package.Name} {package.Version}";
        if (package.Licence is not { } licence)
            _faults.Add($"{what} gives no SPDX expression of its licence, but {package.OtherLicence ?? "nothing at all"}. "
                + "Read its licence, and take another package where it is unfit.");
        else if (LicencesOf(package).Count == 0)
            _faults.Add($"{what} is under {licence}, which is not allowed in {(package.IsShipped ? "a release" : "the house")}. "
                + "Take another package, or add the licence to AllowedLicences with what it asks.");
        else
            CheckTexts(what, LicencesOf(package), package.IsShipped);
    }

    private void CheckTexts(string what, IEnumerable<string> licences, bool isShipped)
    {
        foreach (var licence in licences.Where(one => isShipped && LicenceTexts.Of(one) is null))
            _faults.Add($"{what} is under {licence}, whose text is not in tools/Loadmark.Release/Texts. Put it there from the SPDX licence list.");
    }

    private void CheckFiles(RestoredPackage package, List<Part> parts)
    {
        foreach (var file in package.ForeignFiles.Where(file => !parts.Any(part => part.Holds(file))))
            _faults.Add($"{package.Name} {package.Version} holds {file}, and nobody has said whose work that is. Add it to tools/Loadmark.Release/parts.json.");
    }

    private void CheckPart(Part part)
    {
        var files = Shipped.Where(part.IsIn).SelectMany(package => package.ForeignFiles.Where(part.Holds).Select(file => Path.Combine(package.Folder, file))).ToList();
        if (files.Count == 0 && !part.IsOfProgram)
            _faults.Add($"{part.Name} is in no file of {part.Package} any more. Take it out of tools/Loadmark.Release/parts.json.");
        if (part.Told is { } told && !files.Any(file => File.Exists(file) && File.ReadAllBytes(file).AsSpan().IndexOf(Encoding.ASCII.GetBytes(told)) >= 0))
            _faults.Add($"No file of {part.Name} has '{told}' in it, so it is of another version than {part.Version}. Correct tools/Loadmark.Release/parts.json.");
        if (part.Own)
            return;
        if (part.Licence is not { } licence || !AllowedLicences.Shipped.ContainsKey(licence))
            _faults.Add($"{part.Name}, within {part.Package}, is under {part.Licence ?? "no licence that is told"}, which is not allowed in a release.");
        else
            CheckTexts(part.Name, [licence], isShipped: true);
    }
}
