namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// Takes feeds apart and puts them together otherwise; what was taken apart is kept, so that all can be put back as it was.
/// </summary>
internal sealed class Move(LiveWiring wiring)
{
    private readonly List<(int Load, FeedSite FeedSite, int Ends, LiveFeed Feed)> _taken = [];
    private readonly List<int> _put = [];
    private readonly List<(int Load, LiveFeed Feed, int Kind, bool IsPut)> _steps = [];

    /// <summary>Begins anew; what was done stays.</summary>
    public void Begin()
    {
        _taken.Clear();
        _put.Clear();
        _steps.Clear();
    }

    /// <summary>Takes a load off its feed, if it is on one.</summary>
    public void Take(int load)
    {
        if (wiring.FeedOf(load) is not { } feed)
            return;
        if (wiring.HasHomes)
            _steps.Add((load, feed, feed.Kind, false));
        else
            _taken.Add((load, feed.FeedSite, feed.Ends, feed));
        wiring.Remove(load);
    }

    /// <summary>Puts a dark load on a feed.</summary>
    public bool Put(int load, LiveFeed feed)
    {
        var kind = feed.Kind;
        if (!wiring.Add(load, feed))
            return false;
        Note(load, feed, kind);
        return true;
    }

    /// <summary>Feeds a dark load from free outlets.</summary>
    public bool Put(int load, FeedSite site, int ends)
    {
        if (!wiring.Open(load, site, ends))
            return false;
        Note(load, wiring.FeedOf(load)!, -1);
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
        for (var place = _steps.Count - 1; place >= 0; place--)
            Undo(_steps[place]);
        for (var place = _put.Count - 1; place >= 0; place--)
            wiring.Remove(_put[place]);
        for (var place = _taken.Count - 1; place >= 0; place--)
        {
            if (wiring.FeedOf(_taken[place].Load) is null)
                PutBack(_taken[place].Feed);
        }

        Begin();
    }

    private void Note(int load, LiveFeed feed, int kind)
    {
        if (wiring.HasHomes)
            _steps.Add((load, feed, kind, true));
        else
            _put.Add(load);
    }

    /// <summary>
    /// Undoes one step, with the lead that the feed had before it: where it matters what is plugged in now, leads of which either would do
    /// are not the same.
    /// </summary>
    private void Undo((int Load, LiveFeed Feed, int Kind, bool IsPut) step)
    {
        if (!step.IsPut)
        {
            wiring.PutBack(step.Load, step.Feed, step.Kind);
            return;
        }

        wiring.Remove(step.Load);
        if (step.Feed.Loads.Count > 0)
            wiring.Change(step.Feed, step.Kind);
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
