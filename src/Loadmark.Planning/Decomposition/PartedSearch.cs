using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Decomposition;

/// <summary>
/// Searches for the best wiring of a rig part by part, and puts together what is found and what is proven; an instance serves once.
/// </summary>
internal sealed class PartedSearch
{
    private readonly Rig _rig;
    private readonly PlanProblem _problem;
    private readonly PlanOptions _options;
    private readonly TimeProvider _time;
    private readonly CancellationToken _cancellation;
    private readonly long _begin;
    private readonly ImmutableArray<RigPart> _parts;
    private readonly List<PlanSearch> _feeding = [];

    /// <summary>Splits the rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="time">The clock for that.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    public PartedSearch(Rig rig, PlanOptions options, TimeProvider time, CancellationToken cancellation)
    {
        _rig = rig;
        _options = options;
        _time = time;
        _cancellation = cancellation;
        _begin = time.GetTimestamp();
        _problem = AskedProblem.Of(rig, options);
        _parts = new RigSplitter(_problem).Split();
    }

    /// <summary>Finds the best wiring, or the best that the time allows.</summary>
    public Candidate Best()
    {
        if (_parts is [_])
            return new PlanSearch(_rig, _problem, _options, _time, _cancellation).Best();
        var found = _parts.Select((_, place) => SearchOf(place).Best()).ToList();
        return Candidate.Of(_rig, Together(found), GapsOf(found), _options);
    }

    /// <summary>Whether every load can be fed; null when the time did not suffice to tell.</summary>
    public bool? FeedsAll()
    {
        _feeding.Clear();
        if (_parts is [_])
            return Feeds(new PlanSearch(_rig, _problem, _options, _time, _cancellation));

        // A load in no part is one that nothing could feed.
        if (_parts.Sum(static part => part.Loads) < _problem.Loads.Sum(static load => load.Count))
            return false;
        bool? all = true;
        for (var place = 0; place < _parts.Length; place++)
        {
            var feeds = Feeds(SearchOf(place));
            if (feeds is false)
                return false;
            all = feeds is null ? null : all;
        }

        return all;
    }

    /// <summary>The wiring that feeds every load, as the rules see it; null where none was found when that was asked.</summary>
    public Candidate? Whole()
    {
        var found = _feeding.Select(static search => search.Whole()).OfType<Candidate>().ToList();
        if (found.Count < _parts.Length)
            return null;
        return found is [var whole] ? whole : Candidate.Of(_rig, Together(found), [], _options);
    }

    private bool? Feeds(PlanSearch search)
    {
        var feeds = search.FeedsAll();
        if (feeds is true)
            _feeding.Add(search);
        return feeds;
    }

    /// <summary>
    /// Each part gets its share of the time that is left; what it does not need goes on to those after it, which have more loads.
    /// </summary>
    private PlanSearch SearchOf(int place)
    {
        var part = _parts[place];
        var left = (_options.TimeLimit - _time.GetElapsedTime(_begin)) / (_parts.Length - place);
        return new PlanSearch(part.Rig, AskedProblem.Of(part.Rig, _options), _options with { TimeLimit = left }, _time, _cancellation);
    }

    /// <summary>All feeds, those that are pinned too, in the order of the supplies and their outlets.</summary>
    private ValueList<Feed> Together(List<Candidate> found)
    {
        var places = _problem.Pinned.Outlets.Items.ToDictionary(static outlet => outlet.Rating.Reference, static outlet => outlet.Index);
        var planned = found.SelectMany(static part => part.Wired.Rig.Wired!.Value.Items.Where(static feed => !feed.Pinned));
        return [.. _problem.Pinned.Feeds.Items.Select(static feed => feed.Feed).Concat(planned).OrderBy(feed => places[feed.From[0]])];
    }

    /// <summary>
    /// How far the whole may be from the best: the gaps of the parts added up. Where nothing is proven of a part's level it may
    /// come down to nothing; and after the first level that is not proven nothing is known of those that follow.
    /// </summary>
    private static long?[] GapsOf(List<Candidate> found)
    {
        var units = found.ConvertAll(static part => part.Units());
        var gaps = new long?[units[0].Length];
        for (var level = 0; level < gaps.Length; level++)
        {
            var gap = 0L;
            for (var part = 0; part < found.Count; part++)
                gap += found[part].Gaps.ElementAtOrDefault(level) ?? units[part][level];
            gaps[level] = gap;
            if (gap != 0)
                break;
        }

        return gaps;
    }
}
