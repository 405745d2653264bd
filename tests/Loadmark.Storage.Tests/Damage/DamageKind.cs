namespace Loadmark.Storage.Tests.Damage;

/// <summary>What happens to the files of a store while no program has them open.</summary>
internal enum DamageKind
{
    /// <summary>One byte of the first hundred, the database's header, is another.</summary>
    Header,

    /// <summary>One byte of the first page, where the tables are described, is another.</summary>
    FirstPage,

    /// <summary>One byte anywhere is another.</summary>
    Byte,

    /// <summary>One bit anywhere is the other.</summary>
    Bit,

    /// <summary>A page is zeros.</summary>
    EmptyPage,

    /// <summary>Two pages have changed places.</summary>
    SwappedPages,

    /// <summary>A stretch of random bytes lies over what was there.</summary>
    Overwritten,

    /// <summary>The file ends too early.</summary>
    Truncated,

    /// <summary>The file goes on with bytes that are not its own.</summary>
    Lengthened,

    /// <summary>One byte of the write-ahead log is another.</summary>
    LogByte,

    /// <summary>The write-ahead log ends too early.</summary>
    LogTruncated,

    /// <summary>The write-ahead log of another moment lies beside the database.</summary>
    LogOfAnother,

    /// <summary>The write-ahead log is gone.</summary>
    LogMissing,

    /// <summary>The whole write-ahead log of another store lies beside the database.</summary>
    ForeignLog,

    /// <summary>A journal that SQLite takes for the database's lies beside it.</summary>
    ForeignJournal,

    /// <summary>One byte of a backup is another, and it is restored.</summary>
    BackupByte,

    /// <summary>A backup ends too early, and it is restored.</summary>
    BackupTruncated,
}
