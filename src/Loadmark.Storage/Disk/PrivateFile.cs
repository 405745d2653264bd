namespace Loadmark.Storage.Disk;

/// <summary>
/// Files and folders for the user's eyes only. SQLite gives what it puts beside a database the rights of the database itself.
/// </summary>
public static class PrivateFile
{
    private const UnixFileMode UserOnlyFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode UserOnlyFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const int MostNames = 100;

    /// <summary>Makes a folder that is not there.</summary>
    /// <param name="path">The folder.</param>
    /// <exception cref="IOException">It cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static void MakeFolder(string path)
    {
        if (Directory.Exists(path))
            return;
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(path);
        else
            Directory.CreateDirectory(path, UserOnlyFolder);
    }

    /// <summary>Makes an empty file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mode">What to do where there is one already.</param>
    /// <exception cref="IOException">It cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static void Make(string path, FileMode mode)
    {
        using var made = Open(path, mode);
        if (!made.CanSeek)
            throw new IOException($"'{path}' is no ordinary file, but a pipe or the like.");
    }

    /// <summary>Writes a text into a new file, in the place of one that is there: nobody who could read that can read this.</summary>
    /// <param name="path">The file.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static void Write(string path, string text)
    {
        File.Delete(path);
        using var writer = new StreamWriter(Open(path, FileMode.CreateNew));
        writer.Write(text);
    }

    /// <summary>Makes an empty file of a name that no file has yet.</summary>
    /// <param name="stem">What the name begins with.</param>
    /// <param name="ending">What it ends with; a number comes between where the name is taken.</param>
    /// <returns>Its path.</returns>
    /// <exception cref="IOException">It cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static string MakeNumbered(string stem, string ending)
    {
        for (var number = 1; ; number++)
        {
            var path = number == 1 ? $"{stem}{ending}" : $"{stem}-{number}{ending}";
            try
            {
                Make(path, FileMode.CreateNew);
                return path;
            }
            catch (IOException) when (number < MostNames && File.Exists(path))
            {
                // Another's, or left by a program that was killed.
            }
        }
    }

    private static FileStream Open(string path, FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.ReadWrite | FileShare.Delete };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UserOnlyFile;
        return new FileStream(path, options);
    }
}
