namespace Loadmark.Storage.Sqlite;

/// <summary>Files and folders for the user's eyes only. SQLite gives what it puts beside a database the rights of the database itself.</summary>
internal static class PrivateFile
{
    private const UnixFileMode UserOnlyFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode UserOnlyFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const int MostNames = 100;

    /// <summary>Makes a folder that is not there.</summary>
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
    public static void Make(string path, FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.ReadWrite | FileShare.Delete };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UserOnlyFile;
        using var made = new FileStream(path, options);
    }

    /// <summary>Makes an empty file of a name that no file has yet.</summary>
    /// <param name="stem">What the name begins with.</param>
    /// <param name="ending">What it ends with; a number comes between where the name is taken.</param>
    /// <returns>Its path.</returns>
    public static string MakeNew(string stem, string ending)
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
}
