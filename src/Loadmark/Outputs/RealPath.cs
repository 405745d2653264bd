namespace Loadmark.Outputs;

/// <summary>The one path of a file, whatever links lead there.</summary>
internal static class RealPath
{
    /// <summary>
    /// The path with all links followed, of the file and of the folders above it; what is not there is taken as it is named.
    /// </summary>
    /// <param name="path">The path; not empty.</param>
    /// <exception cref="IOException">Links lead in a circle.</exception>
    public static string Of(string path)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        if (new FileInfo(full).LinkTarget is not null && File.ResolveLinkTarget(full, returnFinalTarget: true) is { } target)
            full = target.FullName;
        return Path.GetDirectoryName(full) is { } folder ? Path.Combine(Of(folder), Path.GetFileName(full)) : full;
    }
}
