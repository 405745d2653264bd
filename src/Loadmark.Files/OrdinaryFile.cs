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

    /// <summary>Whether a path names something that has no length, so that reading it may take until somebody writes to it.</summary>
    /// <param name="path">The path.</param>
    /// <returns>False also where nothing is there, or it cannot be told.</returns>
    public static bool MayBeAPipe(string path)
    {
        try
        {
            return File.Exists(path) && LengthOf(path) == 0;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>
    /// Opens a file to read it. The system lets nobody into a pipe before somebody writes to it: that is waited for so long and no longer.
    /// Once somebody does, what they write may take its time.
    /// </summary>
    /// <param name="path">The path of something that is there.</param>
    /// <param name="patience">How long to wait for somebody to write to a pipe.</param>
    /// <exception cref="TimeoutException">Nobody wrote to the pipe in that time.</exception>
    /// <exception cref="IOException">It cannot be opened.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static FileStream OpenToRead(string path, TimeSpan patience)
    {
        if (!MayBeAPipe(path))
            return Open();

        // Nothing but somebody who writes, or the end of the program, ends the system's wait: it is left to a thread that keeps nothing up.
        var opening = Task.Run(Open);
        try
        {
            return opening.WaitAsync(patience).GetAwaiter().GetResult();
        }
        catch (TimeoutException)
        {
            _ = opening.ContinueWith(static late => late.Result.Dispose(), TaskContinuationOptions.OnlyOnRanToCompletion);
            throw;
        }

        FileStream Open() => new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
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
