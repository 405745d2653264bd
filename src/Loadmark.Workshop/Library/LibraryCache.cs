using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;

namespace Loadmark.Workshop.Library;

/// <summary>Has the library at hand: read once, and after that only what has changed, whichever program changed it.</summary>
/// <param name="store">What is kept, opened.</param>
public sealed class LibraryCache(Store store) : IDisposable
{
    private readonly SemaphoreSlim _turn = new(1);
    private readonly Dictionary<Guid, LibraryGear> _gear = [];
    private GearSnapshot _now = new(0, []);

    /// <summary>The library as it is now.</summary>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async Task<GearSnapshot> NowAsync(CancellationToken cancellationToken = default)
    {
        await _turn.WaitAsync(cancellationToken);
        try
        {
            // A count that went down is that of another database, put in this one's place.
            var stamp = await store.Gear.StampAsync(cancellationToken);
            if (stamp == _now.Stamp)
                return _now;
            var isOther = stamp < _now.Stamp;
            var news = await store.Gear.NewsAsync(isOther ? 0 : _now.Stamp, cancellationToken);
            if (isOther || news.IsAll)
                _gear.Clear();
            foreach (var gear in news.Gear)
                Put(gear);
            return _now = new GearSnapshot(news.Stamp, _gear.Values);
        }
        finally
        {
            _turn.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    private void Put(StoredGear gear)
    {
        if (gear.IsRemoved)
            _gear.Remove(gear.Id);
        else
            _gear[gear.Id] = new LibraryGear(gear);
    }
}
