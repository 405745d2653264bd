using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Disk;

/// <summary>Whether a folder can hold what is kept, told before anything is looked for or made in it.</summary>
public static class StoreFolder
{
    /// <summary>How much of a path is shown at either end where the whole would hide the sentence around it.</summary>
    private const int ShownEnd = 60;

    /// <summary>
    /// Why nothing can be kept in a folder, as far as that can be told without making anything. A folder that is not there is no
    /// trouble: it can be made.
    /// </summary>
    /// <param name="folder">The folder's full path.</param>
    /// <returns>The fault, in words that say what to do; null where nothing is known against the folder.</returns>
    public static StorageException? TroubleWith(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        try
        {
            if (!File.GetAttributes(folder).HasFlag(FileAttributes.Directory))
                return LinkTrouble(folder) ?? NoPlace(folder, "it is no folder");
            if (IsOpenToOthers(folder))
                return Fault(StoreFault.OpenToOthers, folder, "everybody may write there, and so could change or replace them. "
                    + "Take that right away (chmod o-w), or choose another folder");

            // Of a folder that may not be looked into nobody can say that nothing is kept there.
            var database = Path.Combine(folder, DatabaseFile.FileName);
            return File.GetAttributes(database).HasFlag(FileAttributes.Directory) ? NoPlace(database, "it is a folder and no file") : null;
        }
        catch (FileNotFoundException)
        {
            return LinkTrouble(folder);
        }
        catch (DirectoryNotFoundException)
        {
            return NearestThatIsThere(folder) is { } above && !Directory.Exists(above)
                ? NoPlace(folder, $"{Shown(above)} is no folder")
                : null;
        }
        catch (UnauthorizedAccessException)
        {
            return NoPlace(folder, "this account may not look into it");
        }
        catch (PathTooLongException)
        {
            return NoPlace(folder, "its name is longer than the disk takes");
        }
        catch (IOException)
        {
            return LinkTrouble(folder);
        }
    }

    /// <summary>The fault of not knowing which folder is meant.</summary>
    /// <param name="why">Why it is not known, as the beginning of a sentence.</param>
    public static StorageException Unknown(string why) =>
        new(StoreFault.NotThere, $"{why}. Name the folder that rigs are kept in, by its full path, with --data or LOADMARK_DATA.");

    private static bool IsOpenToOthers(string folder) =>
        !OperatingSystem.IsWindows() && File.GetUnixFileMode(folder).HasFlag(UnixFileMode.OtherWrite);

    /// <summary>What is wrong with a link that leads nowhere; null where the folder is no link, and is merely not there.</summary>
    private static StorageException? LinkTrouble(string folder)
    {
        if (new FileInfo(folder).LinkTarget is not { } target)
            return null;
        return Directory.Exists(folder) ? null : NoPlace(folder, $"it is a link to {Shown(target)}, which leads to no folder");
    }

    private static string? NearestThatIsThere(string folder)
    {
        var above = Path.GetDirectoryName(folder);
        while (above is not null && !Path.Exists(above))
            above = Path.GetDirectoryName(above);
        return above;
    }

    private static StorageException NoPlace(string path, string why) =>
        Fault(StoreFault.NotWritable, path, $"{why}. Choose another folder, with --data or LOADMARK_DATA");

    private static StorageException Fault(StoreFault fault, string path, string why) =>
        new(fault, $"Rigs cannot be kept in {Shown(path)}: {why}.");

    private static string Shown(string path) =>
        path.Length <= 4 * ShownEnd ? path : string.Concat(path.AsSpan(0, ShownEnd), "…", path.AsSpan(path.Length - ShownEnd));
}
