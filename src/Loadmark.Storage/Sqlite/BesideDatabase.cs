using Loadmark.Storage.Faults;

namespace Loadmark.Storage.Sqlite;

/// <summary>
/// Looks, before SQLite does, whether what lies beside a database is its own and whole. SQLite goes by what it finds: a log that ends too
/// early is as if nothing had been saved after it, and another database's journal is written over this one.
/// </summary>
internal static class BesideDatabase
{
    private const int Looks = 3;
    private const int PageSize = 4096;
    private const int FormatAt = 18;
    private const int LogFormat = 2;

    private static readonly TimeSpan Between = TimeSpan.FromMilliseconds(50);

    /// <summary>Checks the log and the journal of a database.</summary>
    /// <exception cref="DamageException">One of them is not as it was left; nothing has been touched.</exception>
    public static void Check(string path)
    {
        if (File.Exists(path + DatabaseFile.Rollback) && IsKeptWithLog(path) && new FileInfo(path + DatabaseFile.Rollback).Length > 0)
            throw new DamageException($"{path}{DatabaseFile.Rollback} is not of this database, and SQLite would write it over it.");

        // Another program may be writing: what is seen of two files is then not of one moment.
        for (var look = 1; IsLogShort(path); look++)
        {
            if (look == Looks)
            {
                throw new DamageException(
                    $"The end of its log, {path}{DatabaseFile.WriteAhead}, is missing or damaged: what was saved last is not there.");
            }

            Thread.Sleep(Between);
        }
    }

    /// <summary>Whether the log beside a database is known to be its own, from what a program that did not close it left.</summary>
    public static bool HasOwnLog(string path)
    {
        if (!File.Exists(path + DatabaseFile.Shared) || !File.Exists(path + DatabaseFile.WriteAhead))
            return false;
        using var shared = Open(path + DatabaseFile.Shared);
        using var log = Open(path + DatabaseFile.WriteAhead);
        var there = LogFrames.Of(log);
        return LogIndex.Promised(shared) is { } promised && (promised.Salt == there.Salt || there.IsLaterThan(promised));
    }

    /// <summary>Whether the database is one that never has a journal: this program's, once it is made.</summary>
    private static bool IsKeptWithLog(string path)
    {
        using var file = Open(path);
        var header = new byte[FormatAt + 2];
        return file.Length > PageSize
            && file.ReadAtLeast(header, header.Length, throwOnEndOfStream: false) == header.Length
            && header[FormatAt] == LogFormat;
    }

    private static bool IsLogShort(string path)
    {
        if (!File.Exists(path + DatabaseFile.Shared))
            return false;
        LogFrames? promised;
        using (var shared = Open(path + DatabaseFile.Shared))
            promised = LogIndex.Promised(shared);
        if (promised is not { } frames)
            return false;
        if (!File.Exists(path + DatabaseFile.WriteAhead))
            return true;
        using var log = Open(path + DatabaseFile.WriteAhead);
        var there = LogFrames.Of(log);
        return !there.IsLaterThan(frames) && (there.Salt != frames.Salt || there.Frames < frames.Frames);
    }

    private static FileStream Open(string path) => new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
}
