using Loadmark.Storage;
using Loadmark.Storage.Faults;

namespace Loadmark.Fuzz;

/// <summary>A backup: restored into a store whose rigs are then read, or refused with a sentence; never anything else.</summary>
internal sealed class BackupHarness : Harness
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-fuzz-").FullName;
    private int _count;

    /// <inheritdoc/>
    public override IEnumerable<(string Name, byte[] Content)> Seeds()
    {
        var copy = Path.Combine(_folder, "seed.db");
        using (var store = new Store(Path.Combine(_folder, "seed"), TimeProvider.System))
        {
            store.OpenAsync().GetAwaiter().GetResult();
            store.Rigs.AddAsync("Board", "rig: Board\n").GetAwaiter().GetResult();
        }

        new StoreCopies(Path.Combine(_folder, "seed"), TimeProvider.System).BackUpAsync(copy).GetAwaiter().GetResult();
        yield return ("backup", File.ReadAllBytes(copy));
    }

    /// <inheritdoc/>
    public override void Take(byte[] input)
    {
        var kept = Path.Combine(_folder, $"{_count++}");
        Directory.CreateDirectory(kept);
        try
        {
            var copy = Path.Combine(kept, "copy.db");
            File.WriteAllBytes(copy, input);
            var data = Path.Combine(kept, "data");
            new StoreCopies(data, TimeProvider.System).RestoreAsync(copy).GetAwaiter().GetResult();
            using var store = new Store(data, TimeProvider.System);
            store.OpenAsync().GetAwaiter().GetResult();
            foreach (var rig in store.Rigs.ListAsync().GetAwaiter().GetResult())
                store.Rigs.FindAsync(rig.Id).GetAwaiter().GetResult();
        }
        catch (StorageException fault)
        {
            Holds(fault.Message.Length > 0, "Refused without a reason.");
        }
        finally
        {
            Directory.Delete(kept, recursive: true);
        }
    }

    /// <inheritdoc/>
    public override void Dispose()
    {
        base.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
