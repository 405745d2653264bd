using System.Diagnostics;
using Loadmark.Storage.Faults;

namespace Loadmark.Storage.Tests.Children;

/// <summary>What this program does when a test starts it as a child: one line on standard output for each thing that happened.</summary>
internal static class Child
{
    public static async Task<int> RunAsync(string[] arguments)
    {
        switch (arguments)
        {
            case ["open", var folder]:
                return await OpenAsync(folder);
            case ["save", .. var rigs]:
                await Task.WhenAll(rigs.Chunk(2).Select(static (rig, which) => Task.Run(() => SaveForeverAsync(rig[0], Guid.Parse(rig[1]), which))));
                return 0;
            case ["fill", var folder]:
                await FillAsync(folder);
                return 0;
            case ["read-only", var folder]:
                await ReadOnlyAsync(folder);
                return 0;
            case ["restore", var folder, var backup]:
                await RestoreAsync(folder, backup);
                return 0;
            case ["copies-full", var folder]:
                await ChildCopies.FullAsync(folder);
                return 0;
            case ["copies-read-only", var folder]:
                await ChildCopies.ReadOnlyAsync(folder);
                return 0;
            default:
                return 2;
        }
    }

    /// <summary>The text that a rig is to have after a number of edits: long, so that a save takes several pages.</summary>
    public static string TextAfter(int edits) =>
        $"rig: {edits}\n" + string.Concat(Enumerable.Range(0, 400).Select(line => $"# {unchecked(((line * 7919) + edits) * 48271)} {line}\n"));

    private static async Task<int> OpenAsync(string folder)
    {
        using var store = new Store(folder, TimeProvider.System);
        Say("starting");
        var opening = await store.OpenAsync();
        Say(opening.Fault is { } fault ? $"{fault}: {opening.Trouble}" : $"created {opening.WasCreated}");
        return opening.Fault is null ? 0 : 1;
    }

    /// <summary>Says which rig of those asked for it is and each edit's number once it is saved, and never ends.</summary>
    private static async Task SaveForeverAsync(string folder, Guid id, int which)
    {
        using var store = new Store(folder, TimeProvider.System);
        await store.OpenAsync();
        var rig = (await store.Rigs.FindAsync(id))!;
        for (var edit = int.Parse(rig.Name); ; edit++)
        {
            Say($"{which} {edit}");
            rig = (await store.Rigs.SaveAsync(id, rig.Revision, $"{edit + 1}", TextAfter(edit + 1), $"edit {edit + 1}")).Rig!;
        }
    }

    /// <summary>On a small disk: saves until it is full, makes room, goes on.</summary>
    private static async Task FillAsync(string folder)
    {
        var ballast = Path.Combine(folder, "ballast");
        using var store = new Store(Path.Combine(folder, "kept"), TimeProvider.System);
        Say($"opened {(await store.OpenAsync()).Trouble}");
        var rig = await store.Rigs.AddAsync("0", TextAfter(0));
        await File.WriteAllBytesAsync(ballast, new byte[2_000_000]);
        var edit = 0;
        while (await SavedAsync(edit + 1))
            edit++;

        Say($"same {(await store.Rigs.FindAsync(rig.Id))! == rig}");
        using (var second = new Store(Path.Combine(folder, "kept"), TimeProvider.System))
            Say($"second {(await second.OpenAsync()).Fault}");
        using (var other = new Store(Path.Combine(folder, "another"), TimeProvider.System))
        {
            var opening = await other.OpenAsync();
            Say($"new {opening.Fault}: {opening.Trouble}");
        }

        File.Delete(ballast);
        Say($"again {await SavedAsync(edit + 1)}");
        Say($"name {(await store.Rigs.FindAsync(rig.Id))!.Name} after {edit}");

        async Task<bool> SavedAsync(int number)
        {
            try
            {
                rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, $"{number}", TextAfter(number), $"edit {number}")).Rig!;
                return true;
            }
            catch (StorageException fault)
            {
                Say($"{fault.Fault}: {fault.Message}");
                return false;
            }
        }
    }

    /// <summary>On a disk that is made read-only after a rig was kept there.</summary>
    private static async Task ReadOnlyAsync(string folder)
    {
        using (var store = new Store(folder, TimeProvider.System))
        {
            await store.OpenAsync();
            await store.Rigs.AddAsync("kept", "rig: kept\n");
        }

        using (var mount = Process.Start("mount", ["-o", "remount,ro", folder]))
            await mount.WaitForExitAsync();

        await OpenAsync(folder);
        await OpenAsync(Path.Combine(folder, "deeper"));
    }

    private static async Task RestoreAsync(string folder, string backup)
    {
        var copies = new StoreCopies(folder, TimeProvider.System);
        Say("starting");
        await copies.RestoreAsync(backup);
        Say("restored");
    }

    internal static void Say(string line)
    {
        Console.WriteLine(line);
        Console.Out.Flush();
    }
}
