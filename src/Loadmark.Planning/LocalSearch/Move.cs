namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// Takes feeds apart and puts them together otherwise; what was taken apart is kept, so that all can be put back as it was.
/// </summary>
internal sealed class Move(LiveWiring wiring)
{
    private readonly List<(int Load, FeedSite FeedSite, int Ends, LiveFeed Feed)> _taken = [];
    private readonly List<int> _put = [];

    /// <summary>Begins anew; what was done stays.</summary>
    public void Begin()
    {
        _taken.Clear();
        _put.Clear();
    }

    /// <summary>Takes a load off its feed, if it is on one.</summary>
    public void Take(int load)
    {
        if (wiring.FeedOf(load) is not { } feed)
            return;
        _taken.Add((load, feed.FeedSite, feed.Ends, feed));
        wiring.Remove(load);
    }

    /// <summary>Puts a dark load on a feed.</summary>
    public bool Put(int load, LiveFeed feed)
    {
        if (!wiring.Add(load, feed))
            return false;
        _put.Add(load);
        return true;
    }

    /// <summary>Feeds a dark load from free outlets.</summary>
    public bool Put(int load, FeedSite site, int ends)
    {
        if (!wiring.Open(load, site, ends))
            return false;
        _put.Add(load);
        return true;
    }

    /// <summary>Puts loads that are dark on one new feed.</summary>
    public bool Put(ReadOnlySpan<int> loads, FeedSite site, int ends)
    {
        if (!Put(loads[0], site, ends))
            return false;
        var feed = wiring.FeedOf(loads[0])!;
        foreach (var load in loads[1..])
        {
            if (!Put(load, feed))
                return false;
        }

        return true;
    }

    /// <summary>Puts the wiring back as it was when the move began.</summary>
    public void Undo()
    {
        for (var place = _put.Count - 1; place >= 0; place--)
            wiring.Remove(_put[place]);
        for (var place = _taken.Count - 1; place >= 0; place--)
        {
            if (wiring.FeedOf(_taken[place].Load) is null)
                PutBack(_taken[place].Feed);
        }

        Begin();
    }

    /// <summary>
    /// Puts back what was on one feed. All of it at once: each feed takes the lead with the fewest plugs that will do, and of
    /// two that are half made one could keep the other from the lead that it had.
    /// </summary>
    private void PutBack(LiveFeed feed)
    {
        // The feed may be gone since; then one that is made anew stands in its place.
        var back = feed.Loads.Count > 0 ? feed : null;
        foreach (var (load, site, ends, from) in _taken)
        {
            if (from != feed)
                continue;
            if (!(back is null ? wiring.Open(load, site, ends) : wiring.Add(load, back)))
                throw new InvalidOperationException("What was taken apart cannot be put back.");
            back ??= wiring.FeedOf(load);
        }
    }
}
