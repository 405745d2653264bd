using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning.Decoding;
using Loadmark.Planning.Objective;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Search;

namespace Loadmark.Planning.Decomposition;

/// <summary>
/// Searches for the best wiring of a rig in which supplies may be fed by others. Each choice of those that are fed is a search of its own,
/// in which the inputs are loads that come before all others; an instance serves once.
/// </summary>
/// <remarks>
/// Such a search does not know that a supply which is not isolated joins the returns of its outlets with what feeds it. That makes it the
/// easier problem: what it proves no wiring can better, and what it finds is judged again as it is. Where that falls short, the input is
/// also tried on each outlet by itself, over a lead of its own.
/// </remarks>
internal sealed class InputSearch
{
    /// <summary>
    /// Where there are more choices of the supplies that are fed than this, not every one is looked at, and nothing is proven.
    /// </summary>
    private const int MostChoices = 12;

    private readonly Rig _rig;
    private readonly PlanOptions _options;
    private readonly TimeProvider _time;
    private readonly CancellationToken _cancellation;
    private readonly long _begin;
    private readonly List<PlannedInputs> _choices;
    private readonly bool _isPinnedDark;

    /// <summary>Looks at the rig.</summary>
    /// <param name="rig">The rig; of its wiring only pinned feeds count.</param>
    /// <param name="options">How to plan.</param>
    /// <param name="time">The clock for that.</param>
    /// <param name="cancellation">Stops the search; what was found so far is returned.</param>
    public InputSearch(Rig rig, PlanOptions options, TimeProvider time, CancellationToken cancellation)
    {
        _rig = rig with { Wired = [.. (rig.Wired ?? []).Items.Where(static feed => feed.Pinned)] };
        _options = options;
        _time = time;
        _cancellation = cancellation;
        _begin = time.GetTimestamp();
        List<List<string>> alike = [];

        // Most rigs have no such supply, and many are planned to explain or to buy: they are looked up once, by the search itself.
        if (rig.Supplies.Items.Any(SupplyInput.MustBeFed))
        {
            var pinned = WiredRig.Of(_rig);
            _isPinnedDark = FedSupplies.Unfed(pinned, PlannedInputs.None).Any(static load => load.Feeds.Count > 0);
            alike = [.. AlikeOf(pinned)];
        }

        IsComplete = alike.Aggregate(1L, static (choices, some) => Math.Min(choices * (some.Count + 1), MostChoices + 1)) <= MostChoices;
        _choices = [.. Choices(alike)];
    }

    /// <summary>Whether every choice of inputs that could be fed is looked at.</summary>
    private bool IsComplete { get; }

    private bool IsOver => Left <= TimeSpan.Zero || _cancellation.IsCancellationRequested;

    private TimeSpan Left => _options.TimeLimit - _time.GetElapsedTime(_begin);

    /// <summary>Finds the best wiring, or the best that the time allows.</summary>
    public Candidate Best()
    {
        var best = Search(_choices[0], _choices.Count).Best();
        if (_choices.Count == 1)
            return best;

        var bound = BoundOf(best);
        for (var place = 1; place < _choices.Count; place++)
        {
            var inputs = _choices[place];
            var found = Search(inputs, _choices.Count - place).Best();
            var own = BoundOf(found);
            if (own[(int)Level.Unfed] >= inputs.Weight)
                continue;
            if (own.AsSpan().SequenceCompareTo(bound) < 0)
                bound = own;
            foreach (var candidate in Judged(found, inputs, own))
            {
                if (candidate.IsBetterThan(best))
                    best = candidate;
            }
        }

        var bounds = new ObjectiveBounds();
        bounds.Raise(bound);
        return best with { Gaps = IsComplete ? bounds.GapsOf(best.Units()) : [] };
    }

    /// <summary>
    /// The wiring by which <see cref="FeedsAll"/> knows that every load can be fed, as the rules see it; null where there is none.
    /// </summary>
    public Candidate? Whole { get; private set; }

    /// <summary>Whether every load can be fed; null when the time did not suffice to tell.</summary>
    public bool? FeedsAll()
    {
        var isSure = IsComplete;
        for (var place = 0; place < _choices.Count; place++)
        {
            var inputs = _choices[place];
            var search = Search(inputs, _choices.Count - place);
            var feeds = place == 0 && _isPinnedDark ? false : search.FeedsAll();
            if (feeds is false)
                continue;
            if (place == 0 && feeds is true)
            {
                Whole = search.Whole();
                return true;
            }

            isSure = false;
            if (place > 0 && !IsOver && FeedsAllAsItIs(inputs, place))
                return true;
        }

        return isSure ? false : IsOver || _options.IsBrief ? null : FeedsAllAtBest();
    }

    /// <summary>What the best wiring says, where it is proven that something stays dark or that nothing need be.</summary>
    private bool? FeedsAllAtBest()
    {
        var best = Best();
        if (best.Unfed == 0)
        {
            Whole = best;
            return true;
        }

        return best.Gaps.ElementAtOrDefault(0) is { } gap && gap < best.Unfed ? false : null;
    }

    private bool FeedsAllAsItIs(PlannedInputs inputs, int place)
    {
        var found = Search(inputs, _choices.Count - place).Best();
        Whole = Judged(found, inputs, BoundOf(found)).FirstOrDefault(static candidate => candidate.Unfed == 0);
        return Whole is not null;
    }

    /// <summary>
    /// What was found, as the rules see it; then, as long as that falls short of what is proven, the input on each outlet by itself.
    /// </summary>
    private IEnumerable<Candidate> Judged(Candidate found, PlannedInputs inputs, long[] bound)
    {
        if (found.Unfed < inputs.Weight)
        {
            var real = Candidate.Of(_rig, found.Wired.Rig.Wired!.Value, [], _options);
            if (real.IsSafe)
                yield return real;
            if (real.IsSafe && real.Units().AsSpan().SequenceEqual(bound))
                yield break;
        }

        if (inputs.Supplies.Count > 1)
            yield break;
        var sources = SourcesOf(inputs);
        for (var place = 0; place < sources.Count && !IsOver; place++)
        {
            var pinned = _rig with { Wired = [.. _rig.Wired!.Value.Items, sources[place]] };
            var options = _options with { TimeLimit = Left / (sources.Count - place + 1) };
            var planned = new PartedSearch(pinned, options, _time, _cancellation).Best();
            var feeds = planned.Wired.Rig.Wired!.Value.Items.Select(feed => feed == sources[place] ? feed with { Pinned = false } : feed);
            if (planned.IsSafe)
                yield return Candidate.Of(_rig, [.. feeds], [], _options);
        }
    }

    /// <summary>A feed of the input from each sort of outlet that suits it, at each setting, over a plain lead.</summary>
    private List<Feed> SourcesOf(PlannedInputs inputs)
    {
        var problem = AskedProblem.Of(_rig, _options with { Inputs = inputs });
        var input = problem.Loads.First(static load => load.IsInput);
        return
        [
            .. problem.Singles.Where(source => source.CostOf(input, LeadEnds.Plain) is not null)
                .Select(source => new PlannedFeed(Joint.None, source.Volts, [source.Part], null, [input]))
                .Select(feed => new FeedNamer(problem).Name([feed]).Items.First(static named => !named.Pinned) with { Pinned = true }),
        ];
    }

    /// <summary>A search with some inputs to be fed; it gets its share of the time that is left.</summary>
    private PartedSearch Search(PlannedInputs inputs, int searches) =>
        new(_rig, _options with { Inputs = inputs, TimeLimit = Left / searches }, _time, _cancellation);

    /// <summary>
    /// The inputs that nothing feeds and that could be fed, those of like supplies together: of them it does not matter which are fed,
    /// unless a pinned feed takes from one.
    /// </summary>
    private IEnumerable<List<string>> AlikeOf(WiredRig pinned)
    {
        var inputs = FedSupplies.NotFed(pinned).Where(id => _options.Only?.Contains(id) is not false || pinned.IsInUse(id))
            .ToHashSet(StringComparer.Ordinal);
        inputs = WithinReach(pinned, inputs);
        return pinned.Rig.Supplies.Items.Where(supply => inputs.Contains(supply.Id))
            .GroupBy(supply => supply with { Id = pinned.IsInUse(supply.Id) ? supply.Id : "" })
            .Select(static alike => alike.Select(static supply => supply.Id).ToList());
    }

    /// <summary>
    /// The supplies that could be fed, one from the other, beginning with those that need not be: whatever else is plugged in.
    /// </summary>
    private HashSet<string> WithinReach(WiredRig pinned, HashSet<string> inputs)
    {
        var planned = new PlannedInputs(inputs, inputs.Count + 1);
        var problem = AskedProblem.Of(_rig, _options with { Inputs = planned });
        var ways = FeedCandidates.Pairs(problem).Where(static pair => pair.Load.IsInput)
            .Select(
                pair => (
                    Input: pair.Load.Rating.Load.Id,
                    From: pair.Outlets.Members.Select(outlet => pinned.Outlets[outlet].Rating.Supply.Id).ToHashSet(StringComparer.Ordinal)))
            .ToList();
        var reached = new HashSet<string>(StringComparer.Ordinal);
        while (pinned.DeadWhenFed(reached) is var dead
            && ways.Find(way => !reached.Contains(way.Input) && !way.From.IsSubsetOf(dead)) is { Input: { } input })
            reached.Add(input);
        return reached;
    }

    /// <summary>Which inputs to feed: none first; of few each choice, of many none, one of each sort and all.</summary>
    private IEnumerable<PlannedInputs> Choices(List<List<string>> alike)
    {
        yield return PlannedInputs.None;
        var weight = _rig.Loads.Count + alike.Sum(static some => some.Count) + 1;
        if (!IsComplete)
        {
            foreach (var some in alike)
                yield return Planned([some[0]]);
            yield return Planned(alike.SelectMany(static some => some));
            yield break;
        }

        var counts = new int[alike.Count];
        while (Next())
            yield return Planned(alike.SelectMany((some, place) => some.Take(counts[place])));

        // Counts up as an odometer does; no when all stand at zero again.
        bool Next()
        {
            for (var place = 0; place < counts.Length; place++)
            {
                if (counts[place]++ < alike[place].Count)
                    return true;
                counts[place] = 0;
            }

            return false;
        }

        PlannedInputs Planned(IEnumerable<string> inputs) => new(inputs.ToHashSet(StringComparer.Ordinal), weight);
    }

    /// <summary>
    /// Levels that no wiring of the same choice is before in order: those of what was found, less what it may be from the best.
    /// </summary>
    private static long[] BoundOf(Candidate found)
    {
        var bound = found.Units();
        var isProven = true;
        for (var level = 0; level < bound.Length; level++)
        {
            var gap = isProven ? found.Gaps.ElementAtOrDefault(level) : null;
            bound[level] = gap is { } known ? Math.Max(0, bound[level] - known) : 0;
            isProven &= gap == 0;
        }

        return bound;
    }
}
