using Loadmark.Storage.Faults;
using Loadmark.Storage.Sqlite;

namespace Loadmark.Storage.Copies;

/// <summary>Why a backup was not written or not restored, in words for the user: what is wrong and what to do.</summary>
internal static class CopyFaults
{
    public static StorageException TargetExists(string target) =>
        new(
            StoreFault.AlreadyThere,
            $"There is a file {target} already. No backup was written. Choose another name, or ask for it to be replaced.");

    public static StorageException TargetIsFolder(string target) =>
        new(StoreFault.AlreadyThere, $"{target} is a folder. No backup was written. Name a file in it.");

    public static StorageException TargetIsDatabase(string target) =>
        new(StoreFault.AlreadyThere, $"{target} is a file of the database itself. No backup was written. Choose another name or folder.");

    public static StorageException NothingKept(string database) =>
        new(StoreFault.NotThere, $"There are no kept rigs in {database}. No backup was written. Name the folder that they are in.");

    public static StorageException NoSuchBackup(string path) =>
        new(StoreFault.NotThere, $"There is no file {path}. Nothing was restored.");

    public static StorageException NoGoodCopy(string folder) =>
        new(
            StoreFault.NotThere,
            $"There is no automatic backup in {folder} that is whole. Nothing was restored. Name a backup of your own.");

    public static StorageException NothingToSalvage(string because) =>
        new(StoreFault.NotThere, $"{because} There is nothing to salvage.");

    public static StorageException NothingReadable(string database) =>
        new(StoreFault.Damaged, $"Nothing can be read of {database}. It was left as it is. Restore a backup: loadmark restore lists them.");

    public static StorageException WhileSalvaging(StoreFault fault, string database, string target, Exception cause) =>
        cause as StorageException ?? new StorageException(fault, fault switch
        {
            StoreFault.NotWritable =>
                $"{target} or the folder for temporary files cannot be written. Nothing was salvaged. Check rights and disks.",
            StoreFault.DiskFull =>
                $"The disk of {target} or of temporary files is full. Nothing was salvaged. Free some space, then try again.",
            StoreFault.Damaged or StoreFault.NotADatabase =>
                $"Too little can be read of {database}. Nothing was salvaged. Restore a backup: loadmark restore lists them.",
            _ => $"The disk of {database} failed. Nothing was salvaged. Check the disk.",
        }, cause);

    public static StorageException WhileBackingUp(StoreFault fault, string database, string target, Exception cause) =>
        cause as StorageException ?? new StorageException(fault, fault switch
        {
            StoreFault.NotWritable => $"{target} cannot be written. No backup was written. Check that its folder is there, its rights, "
                + "and that its disk is not read-only.",
            StoreFault.DiskFull => $"The disk of {target} is full. No backup was written. Free some space there or choose another disk.",
            StoreFault.Damaged or StoreFault.NotADatabase =>
                $"{database} is damaged. No backup was written. Put an earlier backup in its place.",
            StoreFault.Busy =>
                $"Another program is keeping {database} to itself. No backup was written. Try again; if it stays so, close that program.",
            _ => $"The disk of {target} failed. No backup was written. Check that disk, and choose another meanwhile.",
        }, cause);

    public static StorageException NoTemporaryFolder(string path, Exception cause) =>
        new(
            StoreFault.NotWritable,
            $"{path} is checked in a folder for temporary files first, and none can be made in {Path.GetTempPath()}. Nothing was restored. "
            + "Check that folder, or name another in TMPDIR.",
            cause);

    /// <summary>A backup that was to come from elsewhere, and did not, or not as long as was said.</summary>
    public static StorageException NotReceived(string named, Exception? cause) =>
        new(StoreFault.NotThere, $"{named} did not arrive whole. Nothing was restored. Choose it again.", cause);

    /// <summary>Faults of the place that a backup from elsewhere is written to.</summary>
    public static StorageException WhileReceiving(StoreFault fault, string named, string folder, Exception cause) =>
        new(fault, fault switch
        {
            StoreFault.DiskFull =>
                $"The disk of {folder} is full, and {named} is put there while it is checked. Nothing was restored. Free some space.",
            StoreFault.NotWritable => $"{named} is put in {folder} while it is checked, and nothing can be written there. "
                + "Nothing was restored. Check the folder's rights and that its disk is not read-only.",
            _ => $"The disk of {folder} failed. Nothing was restored. Check the disk.",
        }, cause);

    /// <summary>Faults of the file that is to be restored.</summary>
    public static StorageException OfBackup(StoreFault fault, string path, Exception? cause) =>
        new(fault, fault switch
        {
            StoreFault.NotADatabase => $"{path} is not a backup of Loadmark. Nothing was restored.",
            StoreFault.Damaged => $"{path} is damaged.{MediumFaults.Place(cause)} Nothing was restored. Take an earlier backup.",
            StoreFault.NewerSchema => $"{path} was written by a newer version of Loadmark. Nothing was restored. Use that version.",
            StoreFault.NotWritable => $"{path} cannot be read. Nothing was restored. Check its rights.",
            StoreFault.DiskFull =>
                $"The disk for temporary files is full, and {path} is checked there first. Nothing was restored. Free some space.",
            _ => $"The disk of {path} failed. Nothing was restored. Check that disk.",
        }, cause);

    /// <summary>Faults of the database that is to be replaced.</summary>
    public static StorageException WhileRestoring(StoreFault fault, string database, Exception cause) =>
        cause as StorageException ?? new StorageException(fault, fault switch
        {
            StoreFault.DiskFull => $"The disk of {database} is full. Nothing was restored; what was kept before is there still. "
                + "Free some space, then try again.",
            StoreFault.NotWritable =>
                $"{database} cannot be written. Nothing was restored. Check the folder's rights and that its disk is not read-only.",
            StoreFault.Busy =>
                $"Another program is keeping {database} to itself. Nothing was restored. Try again; if it stays so, close that program.",
            StoreFault.Damaged or StoreFault.NotADatabase => $"{database} is damaged. Nothing was restored. Close Loadmark, "
                + "then restore again: the file is then set aside.",
            _ => $"The disk of {database} failed. Nothing was restored. Check the disk.",
        }, cause);
}
