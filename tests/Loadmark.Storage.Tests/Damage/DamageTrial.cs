using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Diagnostics;
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

    /// <summary>What was kept before the last edits, and after them.</summary>
    private readonly ImmutableArray<string>[] _states;

    private readonly byte[] _database;
    private readonly byte[] _log;
    private readonly byte[] _databaseWithLog;

    /// <summary>What programs that have the database open share.</summary>
    private readonly byte[] _shared;

    private byte[] _foreignLog = [];

    /// <summary>Every line that was kept at any time.</summary>
    private HashSet<string> _everKept = [];

    private ImmutableArray<string> _restored = [];

    private DamageTrial(ImmutableArray<string>[] states, byte[] database, byte[] databaseWithLog, byte[] log, byte[] shared) =>
        (_states, _database, _databaseWithLog, _log, _shared) = (states, database, databaseWithLog, log, shared);

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
        var last = await SampleStore.ReadAsync(store);

        // Read by a program of its own: see DatabaseFile.IsOpenHere.
        foreach (var beside in (string[])["", "-wal", "-shm"])
            Copied(path + beside, path + ".copy" + beside);
        var trial = new DamageTrial(
            [kept, last],
            database,
            await File.ReadAllBytesAsync(path + ".copy"),
            await File.ReadAllBytesAsync(path + ".copy-wal"),
            await File.ReadAllBytesAsync(path + ".copy-shm"));
        trial._everKept = [.. kept.Concat(between).Concat(last).Select(Bare)];
        await trial.LookElsewhereAsync(folder);
        return trial;
    }

    /// <summary>Makes another store's log, and sees what a whole backup comes to when it is restored.</summary>
    private async Task LookElsewhereAsync(string folder)
    {
        var place = Path.Combine(folder, "another");
        await SampleStore.MakeAsync(place);
        using (var other = new Store(place, TimeProvider.System))
        {
            await other.OpenAsync();
            foreach (var rig in await other.Rigs.ListAsync())
                await other.Rigs.RemoveAsync(rig.Id, rig.Revision);
            var path = Path.Combine(place, Store.FileName);
            Copied(path + "-wal", path + ".copy-wal");
            _foreignLog = await File.ReadAllBytesAsync(path + ".copy-wal");
        }

        place = Directory.CreateDirectory(Path.Combine(folder, "restored")).FullName;
        var backup = Path.Combine(folder, "whole.db");
        await File.WriteAllBytesAsync(backup, _database);
        await File.WriteAllBytesAsync(Path.Combine(place, Store.FileName), _database);
        using var store = new Store(place, TimeProvider.System);
        await store.OpenAsync();
        await store.Copies.RestoreAsync(backup);
        _restored = await SampleStore.ReadAsync(store);
    }

    /// <summary>Damages one copy and looks at it.</summary>
    /// <param name="kind">Which damage.</param>
    /// <param name="seed">Which one of its kind; of the header, the byte is its rest by a hundred.</param>
    /// <param name="folder">A folder for the copies.</param>
    public async Task<DamageRun> RunAsync(DamageKind kind, int seed, string folder)
    {
        var chance = new Random(seed);
        if (kind is DamageKind.BackupByte or DamageKind.BackupTruncated)
            return await RestoreAsync(kind, seed, chance, folder);
        var hasLog = kind is >= DamageKind.LogByte and <= DamageKind.ForeignLog;
        var place = Directory.CreateDirectory(Path.Combine(folder, $"{seed}")).FullName;
        var path = Path.Combine(place, Store.FileName);
        var database = Damaged(hasLog ? _databaseWithLog : _database, kind, seed, chance, out var about);
        await File.WriteAllBytesAsync(path, database);
        if (hasLog && DamagedLog(kind, chance, ref about) is { } log)
            await File.WriteAllBytesAsync(path + "-wal", log);

        // What a program that was killed leaves; a foreign log comes without now and then, as to files that somebody copied.
        if (hasLog && (kind != DamageKind.ForeignLog || seed % 2 == 0))
            await File.WriteAllBytesAsync(path + "-shm", _shared);
        if (kind == DamageKind.ForeignJournal)
            await File.WriteAllBytesAsync(path + "-journal", Journal(database, chance));
        try
        {
            var (outcome, said) = await LookAsync(place, hasLog);
            if (outcome == DamageOutcome.Refused && !(await File.ReadAllBytesAsync(path)).AsSpan().SequenceEqual(database))
                outcome = DamageOutcome.DamagedFurther;
            else if (outcome == DamageOutcome.Refused)
                (outcome, said) = await SalvageAsync(place, database, said);
            return new DamageRun(kind, outcome, $"{kind}, seed {seed}: {about}: {said}");
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(place, recursive: true);
        }
    }

    /// <summary>Takes the way out that is offered: what comes of it is whole, and nothing that was not kept.</summary>
    private async Task<(DamageOutcome Outcome, string Said)> SalvageAsync(string place, byte[] database, string said)
    {
        try
        {
            var report = await new StoreCopies(place, TimeProvider.System).SalvageAsync();
            if (!(await File.ReadAllBytesAsync(report.Aside!)).AsSpan().SequenceEqual(database))
                return (DamageOutcome.DamagedFurther, said);
            using var store = new Store(place, TimeProvider.System);
            if ((await store.OpenAsync()).Trouble is { } trouble)
                return (DamageOutcome.FaultInProgram, $"salvaged, and then: {trouble}");
            var lines = (await SampleStore.ReadAsync(store)).Select(Bare).ToList();
            var stray = lines.Except(_everKept).FirstOrDefault();
            if (stray is not null)
                return (DamageOutcome.Silent, $"salvaged, and made up: {stray}");
            return lines.Count < _states[0].Length && report.Lost.Count == 0
                ? (DamageOutcome.Silent, $"salvaged {lines.Count} without a word of the rest")
                : (DamageOutcome.Salvaged, said);
        }
        catch (StorageException told)
        {
            return (DamageOutcome.Refused, told.Message);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return (DamageOutcome.FaultInProgram, fault.ToString());
        }
    }

    /// <summary>Without what undoing and redoing would bring, which goes with lost edits.</summary>
    private static string Bare(string line) => line.IndexOf("rig: ", StringComparison.Ordinal) is >= 0 and var text
        ? line[..line.IndexOf("+00:00", StringComparison.Ordinal)] + line[text..]
        : line;

    private async Task<(DamageOutcome Outcome, string Said)> LookAsync(string place, bool hasLog)
    {
        try
        {
            using var store = new Store(place, TimeProvider.System);
            if ((await store.OpenAsync()).Trouble is { } trouble)
                return (DamageOutcome.Refused, trouble);
            var lines = await SampleStore.ReadAsync(store);

            if (lines.SequenceEqual(_states[hasLog ? 1 : 0]))
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

    private byte[]? DamagedLog(DamageKind kind, Random chance, ref string about)
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
            case DamageKind.LogMissing:
                about = "no log";
                return null;
            case DamageKind.ForeignLog:
                about = "a whole log of another store";
                return _foreignLog;
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

    /// <summary>Some pages of nonsense in the form of SQLite's rollback journal (sqlite.org, Database File Format, 3).</summary>
    private static byte[] Journal(byte[] database, Random chance)
    {
        var pages = chance.Next(1, 6);
        var journal = new byte[512 + (pages * (PageSize + 8))];
        ((ReadOnlySpan<byte>)[0xd9, 0xd5, 0x05, 0xf9, 0x20, 0xa1, 0x63, 0xd7]).CopyTo(journal);
        var seed = (uint)chance.Next();
        foreach (var (at, value) in ((int, uint)[])[(8, (uint)pages), (12, seed), (16, (uint)(database.Length / PageSize)), (20, 512), (24, PageSize)])
            BinaryPrimitives.WriteUInt32BigEndian(journal.AsSpan(at), value);
        for (var number = 0; number < pages; number++)
        {
            var record = journal.AsSpan(512 + (number * (PageSize + 8)), PageSize + 8);
            BinaryPrimitives.WriteUInt32BigEndian(record, (uint)chance.Next(2, database.Length / PageSize));
            var page = record.Slice(4, PageSize);
            chance.NextBytes(page);
            var sum = seed;
            for (var at = PageSize - 200; at > 0; at -= 200)
                sum += page[at];
            BinaryPrimitives.WriteUInt32BigEndian(record[(PageSize + 4)..], sum);
        }

        return journal;
    }

    private async Task<DamageRun> RestoreAsync(DamageKind kind, int seed, Random chance, string folder)
    {
        var place = Directory.CreateDirectory(Path.Combine(folder, $"{seed}")).FullName;
        var backup = Path.Combine(place, "backup.db");
        await File.WriteAllBytesAsync(
            backup, Damaged(_database, kind == DamageKind.BackupByte ? DamageKind.Byte : DamageKind.Truncated, seed, chance, out var about));
        await File.WriteAllBytesAsync(Path.Combine(place, Store.FileName), _database);
        try
        {
            using var store = new Store(place, TimeProvider.System);
            await store.OpenAsync();
            var (outcome, said) = (DamageOutcome.Harmless, "");
            try
            {
                await store.Copies.RestoreAsync(backup);
                if (!(await SampleStore.ReadAsync(store)).SequenceEqual(_restored))
                    outcome = DamageOutcome.Silent;
            }
            catch (StorageException told)
            {
                outcome = (await SampleStore.ReadAsync(store)).SequenceEqual(_states[0]) ? DamageOutcome.Refused : DamageOutcome.DamagedFurther;
                said = told.Message;
            }
            catch (Exception fault) when (fault is not OperationCanceledException)
            {
                (outcome, said) = (DamageOutcome.FaultInProgram, fault.ToString());
            }

            return new DamageRun(kind, outcome, $"{kind}, seed {seed}: {about}: {said}");
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(place, recursive: true);
        }
    }

    private static void Copied(string from, string to)
    {
        using var copying = Process.Start("cp", [from, to]);
        copying.WaitForExit();
    }
}
