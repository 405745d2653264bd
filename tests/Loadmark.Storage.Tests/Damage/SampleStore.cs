using System.Collections.Immutable;
using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Rigs;

namespace Loadmark.Storage.Tests.Damage;

/// <summary>A store as somebody has it who works with it: rigs with edits, one with an edit taken back, and gear. Damaged copies are made of it.</summary>
internal static class SampleStore
{
    private const int Rigs = 12;
    private const int Edits = 10;
    private const int Gear = 20;

    /// <summary>Makes it in a folder that is not there yet, and closes it.</summary>
    public static async Task MakeAsync(string folder)
    {
        using var store = new Store(folder, TimeProvider.System);
        await store.OpenAsync();
        for (var number = 0; number < Rigs; number++)
        {
            var rig = await store.Rigs.AddAsync($"Board {number}", Text(number, 0));
            for (var edit = 1; edit <= Edits; edit++)
                rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, $"Board {number}", Text(number, edit), $"edit {edit}")).Rig!;
            if (number % 3 == 0)
                await store.Rigs.UndoAsync(rig.Id, rig.Revision);
        }

        for (var number = 0; number < Gear; number++)
        {
            var tag = string.Create(CultureInfo.InvariantCulture, $"delay-{number}");
            await store.Gear.AddAsync(
                new GearContent { Kind = GearKind.Load, Tag = tag, Name = $"Delay {number}", Label = "9V DC 300mA", Text = $"{{ label: 9V DC 300mA, name: Delay {number} }}" },
                "added");
        }
    }

    /// <summary>All that is kept, as it is read; a line each.</summary>
    /// <exception cref="Faults.StorageException">It cannot be read, and says so.</exception>
    public static async Task<ImmutableArray<string>> ReadAsync(Store store)
    {
        var lines = new List<string>();
        foreach (var summary in (await store.Rigs.ListAsync()).OrderBy(static rig => rig.Id))
        {
            var rig = await store.Rigs.FindAsync(summary.Id);
            lines.Add($"{summary.Id} {summary.Name} {summary.Revision} {summary.Changed:O} {Said(rig)}");
        }

        var news = await store.Gear.NewsAsync(0);
        foreach (var gear in news.Gear.OrderBy(static gear => gear.Id))
            lines.Add($"{gear.Id} {gear.Revision} {gear.Content.Kind} {gear.Content.Tag} {gear.Content.Name} {gear.Content.Label} {gear.Content.Text}");
        return [.. lines];
    }

    private static string Said(StoredRig? rig) => rig is null ? "is not there" : $"{rig.Name} {rig.Revision} {rig.UndoWhat} {rig.RedoWhat} {rig.Text}";

    private static string Text(int rig, int edit) =>
        string.Create(CultureInfo.InvariantCulture, $"rig: Board {rig}\nloads:\n")
        + string.Concat(Enumerable.Range(0, 4 + rig).Select(load => string.Create(
            CultureInfo.InvariantCulture, $"  drive-{load}: {{ label: 9V DC {(load == 0 ? edit : (7 * load) + rig)}mA centre negative }}  # {Guid.Empty}{load * 77}\n")));
}
