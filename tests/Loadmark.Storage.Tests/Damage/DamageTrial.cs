using System.Collections.Immutable;
using Loadmark.Storage.Faults;
using Microsoft.Data.Sqlite;

namespace Loadmark.Storage.Tests.Damage;

/// <summary>Damages copies of a store, each by its seed, and tells what the program makes of them.</summary>
internal sealed class DamageTrial
{
    /// <summary>Bytes of the header of a SQLite database (sqlite.org, Database File Format, 1.3).</summary>
    public const int HeaderSize = 100;

    private const int PageSize = 4096;
    private const int LogHeader = 32;

    /// <summary>What was kept before the last edits, and after each of them.</summary>
    private readonly ImmutableArray<string>[] _states;

    private readonly byte[] _database;
    private readonly byte[] _log;
    private readonly byte[] _databaseWithLog;

    private DamageTrial(ImmutableArray<string>[] states, byte[] database, byte[] databaseWithLog, byte[] log) =>
        (_states, _database, _databaseWithLog, _log) = (states, database, databaseWithLog, log);

    /// <summary>Makes the store that is damaged, closed and as a program that was killed leaves it.</summary>
    /// <param name="folder">A folder for it.</param>
    public static async Task<DamageTrial> MakeAsync(string folder)
    {
        var place = Path.Combine(folder, "whole");
        await SampleStore.MakeAsync(place);
        var path = Path.Combine(place, Store.FileName);
        SqliteConnection.ClearAllPools();
        var database = await File.ReadAllBytesAsync(path);

        using var store = new Store(place, TimeProvider.System);
        await store.OpenAsync();
        var first = (await store.Rigs.ListAsync()).OrderBy(static rig => rig.Id).First();
        var kept = await SampleStore.ReadAsync(store);
        var rig = (await store.Rigs.FindAsync(first.Id))!;
        rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "Board 0", rig.Text + "# one more\n", "one more")).Rig!;
        var between = await SampleStore.ReadAsync(store);
        await store.Rigs.UndoAsync(rig.Id, rig.Revision);
        return new DamageTrial([kept, between, await SampleStore.ReadAsync(store)], database, Shared(path), Shared(path + "-wal"));
    }

    /// <summary>Damages one copy and looks at it.</summary>
    /// <param name="kind">Which damage.</param>
    /// <param name="seed">Which one of its kind; of the header, the byte is its rest by a hundred.</param>
    /// <param name="folder">A folder for the copies.</param>
    public async Task<DamageRun> RunAsync(DamageKind kind, int seed, string folder)
    {
        var chance = new Random(seed);
        var hasLog = kind >= DamageKind.LogByte;
        var place = Directory.CreateDirectory(Path.Combine(folder, $"{seed}")).FullName;
        var path = Path.Combine(place, Store.FileName);
        var database = Damaged(hasLog ? _databaseWithLog : _database, kind, seed, chance, out var about);
        await File.WriteAllBytesAsync(path, database);
        if (hasLog)
            await File.WriteAllBytesAsync(path + "-wal", DamagedLog(kind, chance, ref about));
        try
        {
            var (outcome, said) = await LookAsync(place, hasLog);
            if (outcome == DamageOutcome.Refused && !(await File.ReadAllBytesAsync(path)).AsSpan().SequenceEqual(database))
                outcome = DamageOutcome.DamagedFurther;
            return new DamageRun(kind, outcome, $"{kind}, seed {seed}: {about}: {said}");
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(place, recursive: true);
        }
    }

    private async Task<(DamageOutcome Outcome, string Said)> LookAsync(string place, bool hasLog)
    {
        try
        {
            using var store = new Store(place, TimeProvider.System);
            if ((await store.OpenAsync()).Trouble is { } trouble)
                return (DamageOutcome.Refused, trouble);
            var lines = await SampleStore.ReadAsync(store);

            // A log counts up to the last edit that is whole in it: SQLite has checksums there, and the rest is as if it had not been.
            if (_states.Take(hasLog ? _states.Length : 1).Any(state => lines.SequenceEqual(state)))
            {
                // What reads well is worked on as well: an edit, and a backup of all.
                await store.Rigs.AddAsync("Board, new", "rig: Board, new\n");
                await store.Copies.BackUpAsync(Path.Combine(place, "copy.db"));
                return (DamageOutcome.Harmless, "");
            }

            var (now, before) = lines.Zip(_states[0]).FirstOrDefault(static pair => pair.First != pair.Second);
            var at = now is null ? 0 : now.Zip(before).TakeWhile(static pair => pair.First == pair.Second).Count();
            return (DamageOutcome.Silent, now is null ? $"{lines.Length} pieces" : $"{now[at..Math.Min(now.Length, at + 20)]} for {before[at..Math.Min(before.Length, at + 20)]}");
        }
        catch (StorageException told)
        {
            return (DamageOutcome.ToldWhenRead, told.Message);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return (DamageOutcome.FaultInProgram, fault.ToString());
        }
    }

    private static byte[] Damaged(byte[] whole, DamageKind kind, int seed, Random chance, out string about)
    {
        var bytes = (byte[])whole.Clone();
        var pages = bytes.Length / PageSize;
        switch (kind)
        {
            case DamageKind.Header:
                about = Flip(bytes, seed % HeaderSize, chance);
                break;
            case DamageKind.FirstPage:
                about = Flip(bytes, chance.Next(PageSize), chance);
                break;
            case DamageKind.Byte:
                about = Flip(bytes, chance.Next(bytes.Length), chance);
                break;
            case DamageKind.Bit:
                var at = chance.Next(bytes.Length);
                bytes[at] ^= (byte)(1 << chance.Next(8));
                about = $"bit of {at}";
                break;
            case DamageKind.EmptyPage:
                var page = chance.Next(pages);
                bytes.AsSpan(page * PageSize, PageSize).Clear();
                about = $"page {page + 1}";
                break;
            case DamageKind.SwappedPages:
                var (one, other) = (chance.Next(pages), chance.Next(pages));
                whole.AsSpan(one * PageSize, PageSize).CopyTo(bytes.AsSpan(other * PageSize));
                whole.AsSpan(other * PageSize, PageSize).CopyTo(bytes.AsSpan(one * PageSize));
                about = $"pages {one + 1} and {other + 1}";
                break;
            case DamageKind.Overwritten:
                var start = chance.Next(bytes.Length - 512);
                chance.NextBytes(bytes.AsSpan(start, chance.Next(1, 512)));
                about = $"from {start}";
                break;
            case DamageKind.Truncated:
                bytes = bytes[..chance.Next(1, bytes.Length)];
                about = $"to {bytes.Length}";
                break;
            case DamageKind.Lengthened:
                var more = new byte[chance.Next(1, 2 * PageSize)];
                chance.NextBytes(more);
                bytes = [.. bytes, .. more];
                about = $"by {more.Length}";
                break;
            default:
                about = "";
                break;
        }

        return bytes;
    }

    private byte[] DamagedLog(DamageKind kind, Random chance, ref string about)
    {
        var log = (byte[])_log.Clone();
        switch (kind)
        {
            case DamageKind.LogByte:
                about = Flip(log, chance.Next(log.Length), chance);
                return log;
            case DamageKind.LogTruncated:
                log = log[..chance.Next(1, log.Length)];
                about = $"to {log.Length}";
                return log;
            default:
                // The same frames under another salt, as of a database that was there before.
                about = Flip(log, chance.Next(LogHeader), chance);
                return log;
        }
    }

    private static string Flip(byte[] bytes, int at, Random chance)
    {
        var before = bytes[at];
        bytes[at] = (byte)(before + chance.Next(1, 256));
        return $"byte {at} from {before} to {bytes[at]}";
    }

    /// <summary>A file that the store has open.</summary>
    private static byte[] Shared(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }
}
