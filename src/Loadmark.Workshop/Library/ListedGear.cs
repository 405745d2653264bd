using Loadmark.Core.Gear;
using Loadmark.Storage;
using Loadmark.Storage.Faults;

namespace Loadmark.Workshop.Library;

/// <summary>A line of a list of gear.</summary>
/// <param name="Gear">The piece.</param>
/// <param name="Rigs">How many rigs have it.</param>
public sealed record ListedGear(LibraryGear Gear, int Rigs)
{
    /// <summary>How many of what is looked for are shown where nobody says: the best.</summary>
    private const int MostFound = 50;

    /// <summary>Looks for gear.</summary>
    /// <param name="store">What is kept.</param>
    /// <param name="cache">The gear of it.</param>
    /// <param name="words">What is looked for; empty for all there is.</param>
    /// <param name="kind">Only gear of this kind; null for all.</param>
    /// <param name="most">At most so many; null for the best of what is looked for, or all there is.</param>
    /// <param name="stop">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public static async Task<List<ListedGear>> FindAsync(
        Store store, LibraryCache cache, string words, GearKind? kind, int? most, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(cache);
        ArgumentNullException.ThrowIfNull(words);
        var now = await cache.NowAsync(stop);
        var uses = await store.Gear.Uses.CountAsync(stop);
        return [.. now.Search(words, most ?? (words.Length == 0 ? int.MaxValue : MostFound), kind)
            .Select(gear => new ListedGear(gear, RigsOf(gear, uses)))];
    }

    /// <summary>How many rigs have a piece.</summary>
    /// <param name="gear">The piece.</param>
    /// <param name="uses">How many rigs have what, as the store counts them; what no rig has need not be in it.</param>
    public static int RigsOf(LibraryGear gear, IReadOnlyDictionary<(GearKind Kind, string TagKey), int> uses)
    {
        ArgumentNullException.ThrowIfNull(gear);
        ArgumentNullException.ThrowIfNull(uses);
        return uses.TryGetValue((gear.Kind, GearTag.KeyOf(gear.Tag)), out var count) ? count : 0;
    }
}
