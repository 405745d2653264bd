using Loadmark.Storage.Faults;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Loadmark.Storage.Sqlite;

/// <summary>Tells a failure of the medium from a fault in the program, and puts it into words.</summary>
internal static class MediumFaults
{
    /// <summary>Which failure of the medium an exception stands for, or one within it; null when it is something else.</summary>
    public static StoreFault? KindOf(Exception fault) => fault switch
    {
        SqliteException sqlite => KindOf(sqlite.SqliteErrorCode, sqlite.SqliteExtendedErrorCode),
        StorageException storage => storage.Fault,
        InvalidDataException or DamageException => StoreFault.Damaged,
        UnauthorizedAccessException => StoreFault.NotWritable,
        IOException io when IsDiskFull(io) => StoreFault.DiskFull,
        IOException => StoreFault.NotWritable,
        { InnerException: { } inner } => KindOf(inner),
        _ => null,
    };

    public static StorageException WhileChanging(StoreFault fault, Exception cause) =>
        new(fault, $"{Happened(fault)}{Place(cause)} The edit is not saved; what was saved before is still there. {Remedy(fault)}", cause);

    public static StorageException WhileReading(StoreFault fault, Exception cause) =>
        new(fault, $"{Happened(fault)}{Place(cause)} The kept rigs could not be read. {Remedy(fault)}", cause);

    /// <summary>Which rig or gear is damaged, where that is known.</summary>
    public static string Place(Exception? cause)
    {
        for (; cause is not null; cause = cause.InnerException)
        {
            if (cause is DamageException broken)
                return $" {broken.Message}";
        }

        return "";
    }

    private static string Happened(StoreFault fault) => fault switch
    {
        StoreFault.NotWritable => "The database of the kept rigs cannot be found or written.",
        StoreFault.OpenToOthers => "Everybody may write in the folder of the kept rigs.",
        StoreFault.DiskFull => "The disk is full.",
        StoreFault.NotADatabase or StoreFault.Damaged => "The database of the kept rigs is damaged.",
        StoreFault.NewerSchema => "The database of the kept rigs was written by a newer version of Loadmark.",
        StoreFault.Busy => "Another program has kept the database of the kept rigs to itself for too long.",
        _ => "The disk failed.",
    };

    private static string Remedy(StoreFault fault) => fault switch
    {
        StoreFault.NotWritable => "Check the folder's rights and that its disk is there and not read-only, then try again.",
        StoreFault.OpenToOthers => "Take that right away, then start again.",
        StoreFault.DiskFull => "Free some space, then try again.",
        StoreFault.NotADatabase or StoreFault.Damaged =>
            "Export this rig to a file, close Loadmark and start it again: it then says what can be done.",
        StoreFault.NewerSchema => "Close this version and start the newer one.",
        StoreFault.Busy => "Try again; if it stays so, close the other program.",
        _ => "Export this rig to another disk, then check this one.",
    };

    private static StoreFault? KindOf(int code, int extended) => code switch
    {
        raw.SQLITE_FULL => StoreFault.DiskFull,
        raw.SQLITE_READONLY or raw.SQLITE_CANTOPEN or raw.SQLITE_PERM => StoreFault.NotWritable,
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED or raw.SQLITE_PROTOCOL => StoreFault.Busy,
        raw.SQLITE_CORRUPT => StoreFault.Damaged,
        raw.SQLITE_NOTADB => StoreFault.NotADatabase,
        // A file that ends too early.
        raw.SQLITE_IOERR when extended == raw.SQLITE_IOERR_SHORT_READ => StoreFault.Damaged,
        raw.SQLITE_IOERR => StoreFault.Disk,
        _ => null,
    };

    /// <summary>ENOSPC, and what Windows says (ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL).</summary>
    private static bool IsDiskFull(IOException fault) =>
        fault.HResult is 28 or unchecked((int)0x80070070) or unchecked((int)0x80070027);
}
