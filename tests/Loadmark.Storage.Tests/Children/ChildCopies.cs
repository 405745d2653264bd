using System.Diagnostics;
using Loadmark.Storage.Faults;

namespace Loadmark.Storage.Tests.Children;

/// <summary>Backups and restoring on small disks of the child's own.</summary>
internal static class ChildCopies
{
    /// <summary>Fills the disk and tries to back up to it, and to restore on it; then makes room.</summary>
    public static async Task FullAsync(string folder)
    {
        var (kept, ballast, backup) = (Path.Combine(folder, "kept"), Path.Combine(folder, "ballast"), Path.Combine(folder, "backup.db"));
        using var store = new Store(kept, TimeProvider.System);
        await store.OpenAsync();
        for (var number = 0; number < 20; number++)
            await store.Rigs.AddAsync($"{number}", Child.TextAfter(number));
        await store.Copies.BackUpAsync(backup);
        await store.Rigs.AddAsync("after", Child.TextAfter(20));
        Fill(ballast);

        await TryAsync(() => store.Copies.BackUpAsync(Path.Combine(folder, "second.db")));
        await TryAsync(() => store.Copies.BackUpAsync(backup, overwrite: true));
        await TryAsync(() => store.Copies.RestoreAsync(backup));
        Child.Say($"rigs {(await store.Rigs.ListAsync()).Length}");
        Child.Say($"files {string.Join(' ', Directory.GetFiles(folder).Concat(Directory.GetFiles(kept)).Select(Path.GetFileName).Order(StringComparer.Ordinal))}");

        File.Delete(ballast);
        var report = await store.Copies.RestoreAsync(backup);
        Child.Say($"restored {report.Contents.Rigs}, before {report.Previous is not null}, now {(await store.Rigs.ListAsync()).Length}");
    }

    /// <summary>A disk that becomes read-only: what is kept can be backed up to another, and nothing can be restored.</summary>
    public static async Task ReadOnlyAsync(string folder)
    {
        var elsewhere = Directory.CreateTempSubdirectory("loadmark-elsewhere-").FullName;
        try
        {
            var backup = Path.Combine(elsewhere, "backup.db");
            using (var store = new Store(folder, TimeProvider.System))
            {
                await store.OpenAsync();
                await store.Rigs.AddAsync("kept", Child.TextAfter(1));
            }

            using (var mount = Process.Start("mount", ["-o", "remount,ro", folder]))
                await mount.WaitForExitAsync();
            var copies = new StoreCopies(folder, TimeProvider.System);
            Child.Say($"backed up {(await copies.BackUpAsync(backup)).Contents.Rigs}");
            await TryAsync(() => copies.BackUpAsync(Path.Combine(folder, "backup.db")));
            await TryAsync(() => copies.RestoreAsync(backup));

            using var other = new Store(Path.Combine(elsewhere, "other"), TimeProvider.System);
            await other.OpenAsync();
            Child.Say($"restored {(await other.Copies.RestoreAsync(backup)).Contents.Rigs}");
            Child.Say($"same {(await other.Rigs.FindAsync((await other.Rigs.ListAsync())[0].Id))!.Text == Child.TextAfter(1)}");
        }
        finally
        {
            Directory.Delete(elsewhere, recursive: true);
        }
    }

    private static void Fill(string ballast)
    {
        using var file = new FileStream(ballast, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        try
        {
            while (true)
                file.Write(new byte[4096]);
        }
        catch (IOException)
        {
            // Full.
        }
    }

    private static async Task TryAsync<T>(Func<Task<T>> action)
    {
        try
        {
            Child.Say($"done {await action()}");
        }
        catch (StorageException fault)
        {
            Child.Say($"{fault.Fault}: {fault.Message}");
        }
    }
}
