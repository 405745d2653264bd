namespace Loadmark.Files;

/// <summary>Tells files that hold what is written to them from pipes, devices and the like, which a path may name too.</summary>
public static class OrdinaryFile
{
    /// <summary>The length of the file that a path leads to, in bytes; 0 of what has none, such as a pipe or a device.</summary>
    /// <param name="path">The path of something that is there.</param>
    /// <exception cref="IOException">It cannot be told.</exception>
    public static long LengthOf(string path)
    {
        // A link has a length of its own, and one to a pipe leads to no path at all.
        var file = new FileInfo(path);
        if (file.LinkTarget is not null)
            file = new FileInfo(file.ResolveLinkTarget(returnFinalTarget: true)!.FullName);
        return file.Exists ? file.Length : 0;
    }

    /// <summary>Whether what a path names, links followed, is an ordinary file.</summary>
    /// <param name="path">The path of something that is there.</param>
    /// <returns>False also for a folder, and where it cannot be told because it may not be opened.</returns>
    public static bool Is(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        try
        {
            // Only a file has a length. An empty one is told by what only a file lets be done to it: setting the length that it has.
            if (LengthOf(path) > 0)
                return true;
            using var stream = new FileStream(
                path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
            if (!stream.CanSeek)
                return false;
            stream.SetLength(stream.Length);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return false;
        }
    }
}
