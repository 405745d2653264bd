using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;

namespace Loadmark.Workshop.DataFolders;

/// <summary>Where the user's rigs and gear are kept.</summary>
public static class DataFolder
{
    /// <summary>The folder where rigs are kept: as asked, else as the environment says, else in the user's own data.</summary>
    /// <param name="asked">What was asked for on the command line; null for nothing.</param>
    /// <param name="environment">Reads the environment.</param>
    /// <returns>The folder's full path.</returns>
    /// <exception cref="StorageException">Which folder is meant cannot be told.</exception>
    public static string From(string? asked, Func<string, string?> environment)
    {
        ArgumentNullException.ThrowIfNull(environment);
        if (!string.IsNullOrEmpty(asked))
            return Full(asked);
        if (environment("LOADMARK_DATA") is { Length: > 0 } set)
            return Full(set);
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);

        // Where no account says which folder is the user's own, the system says the root's; and one that is named from the folder that the
        // program happens to be started in is another every time.
        if (!Path.IsPathFullyQualified(own) || (own == "/.local/share" && string.IsNullOrEmpty(environment("HOME"))))
            throw StoreFolder.Unknown("There is no folder of your own: HOME is not set, or is no full path");
        return Path.Combine(own, "loadmark");
    }

    private static string Full(string path)
    {
        try
        {
            return Path.GetFullPath(path);
        }
        catch (FileNotFoundException)
        {
            throw StoreFolder.Unknown("The folder that the program was started in is gone");
        }
    }
}
