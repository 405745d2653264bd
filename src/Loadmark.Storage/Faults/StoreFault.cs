namespace Loadmark.Storage.Faults;

/// <summary>Why the store cannot be opened, or a change cannot be kept.</summary>
public enum StoreFault
{
    /// <summary>The folder or the file cannot be made, found or written: rights, a read-only disk, a file in its place.</summary>
    NotWritable,

    /// <summary>Everybody may write in the folder, and so could change or replace what is kept there.</summary>
    OpenToOthers,

    /// <summary>There is no space left on the disk.</summary>
    DiskFull,

    /// <summary>The file is something other than a database of this program.</summary>
    NotADatabase,

    /// <summary>The database is damaged.</summary>
    Damaged,

    /// <summary>The database was written by a newer version of this program.</summary>
    NewerSchema,

    /// <summary>Another program keeps the database to itself for too long.</summary>
    Busy,

    /// <summary>The disk failed in some other way.</summary>
    Disk,

    /// <summary>A file that was to be written is there already, and is not to be replaced.</summary>
    AlreadyThere,

    /// <summary>A file that was to be read is not there.</summary>
    NotThere,
}
