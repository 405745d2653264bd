using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Why the database cannot be opened, in words for the user: what is wrong, where, and what to type next.</summary>
internal static class OpeningFaults
{
    /// <summary>The fault in words.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="file">The database.</param>
    /// <param name="cause">What failed; null where nothing did.</param>
    public static StorageException Of(StoreFault fault, DatabaseFile file, Exception? cause)
    {
        var path = file.Path;
        return cause as StorageException ?? new StorageException(fault, fault switch
        {
            StoreFault.NotWritable => $"Rigs cannot be kept in {path}: the place cannot be written. "
                + "Check the rights of the folder and that the disk is not read-only, or choose another folder with --data.",
            StoreFault.DiskFull => $"The disk of {path} is full. Free some space and start again.",
            StoreFault.NotADatabase =>
                $"{path} is not a database of Loadmark. Nothing was changed in it. {WaysOut(file, canSalvage: false)}",
            StoreFault.Damaged =>
                $"{path} is damaged.{MediumFaults.Place(cause)} It was left as it is. {WaysOut(file, canSalvage: true)}",
            StoreFault.NewerSchema => $"{path} was written by a newer version of Loadmark. Nothing was changed in it. Use that version, "
                + "or choose another folder with --data.",
            StoreFault.Busy => $"Another program is keeping {path} to itself. Close it and start again.",
            _ => $"The disk of {path} failed while the kept rigs were being opened. Check the disk and start again.",
        }, cause);
    }

    /// <summary>
    /// What is to be said where there was no database, or an empty file, and one was made; null where no backup shows that there was ever
    /// another.
    /// </summary>
    /// <param name="file">The database that was made.</param>
    public static string? OfNothing(DatabaseFile file) => new KeptCopies(file, TimeProvider.System).List().Count == 0
        ? null
        : $"{file.Path} was empty or gone, and was made anew, though there are backups of it. {WaysOut(file, canSalvage: false)}";

    /// <summary>What can be typed next. Each sets the file aside and keeps it.</summary>
    private static string WaysOut(DatabaseFile file, bool canSalvage)
    {
        var data = $"--data {(file.Folder.Contains(' ', StringComparison.Ordinal) ? $"\"{file.Folder}\"" : file.Folder)}";
        var salvage = canSalvage ? $" What can still be read is kept by: loadmark salvage {data}" : "";
        return new KeptCopies(file, TimeProvider.System).List() is [{ } last, ..]
            ? $"The backup of {last.Made.ToLocalTime():yyyy-MM-dd HH:mm} is put in its place by: loadmark restore --last {data}.{salvage}"
            : $"A backup is put in its place by: loadmark restore FILE {data}.{salvage}";
    }
}
