namespace Loadmark.Tests.House;

/// <summary>The source files of the program: what is below <c>src</c> and neither built nor for a machine only.</summary>
internal static class SourceTree
{
    /// <summary>The files, C# and pages, in the order of their paths.</summary>
    /// <param name="root">The repository's folder.</param>
    public static IReadOnlyList<SourceFile> Read(string root)
    {
        var src = Path.Combine(root, "src");
        return [.. Directory.EnumerateFiles(src, "*", SearchOption.AllDirectories)
            .Where(static file => Path.GetExtension(file) is ".cs" or ".razor")
            .Select(file => (File: file, Path: Path.GetRelativePath(src, file).Replace('\\', '/')))
            .Where(static file => !file.Path.Split('/')[1..].Intersect(["bin", "obj"], StringComparer.Ordinal).Any())
            .OrderBy(static file => file.Path, StringComparer.Ordinal)
            .Select(static file => new SourceFile(file.Path, File.ReadAllLines(file.File)))];
    }

    /// <summary>Names of files that several folders have.</summary>
    /// <param name="files">The files.</param>
    public static IReadOnlyList<IReadOnlyList<SourceFile>> Namesakes(IEnumerable<SourceFile> files) =>
        [.. files.GroupBy(static file => file.Name, StringComparer.OrdinalIgnoreCase)
            .Where(static names => names.Count() > 1)
            .Select(IReadOnlyList<SourceFile> (names) => [.. names])];
}
