using System.Collections.Immutable;
using Loadmark.Core.Fits;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Sorts outlets at their settings into the classes that leads for several loads or outlets take from.</summary>
internal sealed class FeedClassBuilder(ImmutableArray<Source> sources, decimal headroom)
{
    /// <summary>The classes of feeds from single outlets.</summary>
    public ImmutableArray<FeedClass> Singles() => Classes(sources, Joint.None, 1);

    /// <summary>
    /// Pairs of alike outlets, known to be d.c. and of known polarity, of one supply, at one voltage, side by side: their limits add.
    /// </summary>
    public ImmutableArray<FeedClass> ParallelPairs() => Classes(
        sources.Where(static source => source.Group.Count >= 2 && source.Limit is not null && source.Point.IsForJoining),
        Joint.Parallel,
        2);

    /// <summary>
    /// Pairs of outlets, known to be d.c. and of one polarity, that each have a return of their own: the voltages add, each limit counts.
    /// Of two in different order only one is kept, unless they end in different plugs: the first's counts.
    /// </summary>
    public ImmutableArray<FeedClass> SeriesPairs()
    {
        var legs = sources.Where(static source => source.Group.SharedReturn is null && source.Point.IsForJoining)
            .GroupBy(
                static source => (
                    source.Point, source.Limit?.Scale, source.Group.MustBeCertain, source.Group.PlannedInput, source.Group.Apart,
                    source.Group.Board))
            .Select(alike => (First: alike.First(), Leg: LegOf(alike, 1), Outlets: alike.Sum(source => source.Group.Count))).ToList();
        var classes = ImmutableArray.CreateBuilder<FeedClass>();
        for (var one = 0; one < legs.Count; one++)
        {
            for (var other = 0; other < legs.Count; other++)
            {
                var (first, second) = (legs[one].First, legs[other].First);
                if (first.Point.Polarity.Value != second.Point.Polarity.Value || (one == other && legs[one].Outlets < 2)
                    || Boards.AreApart(first.Group.Board, second.Group.Board))
                    continue;
                if (other >= one || first.Point.Plug != second.Point.Plug)
                {
                    var point = FeedPoint.At(first.Group.Rating, first.Point.Standing.InSeriesWith(second.Point.Standing));
                    var mustBeCertain = first.Group.MustBeCertain || second.Group.MustBeCertain;
                    classes.Add(new FeedClass(Joint.Series, point, null, [legs[one].Leg, legs[other].Leg], mustBeCertain));
                }
            }
        }

        return classes.ToImmutable();
    }

    private ImmutableArray<FeedClass> Classes(IEnumerable<Source> alone, Joint joined, int times) =>
    [
        .. alone.GroupBy(
            source => (
                source.Point, source.Group.SharedReturn, source.Limit?.Scale, source.Group.MustBeCertain, source.Group.PlannedInput,
                source.Group.Apart, source.Group.Board))
            .Select(
                alike => new FeedClass(joined, alike.Key.Point, alike.Key.SharedReturn, [LegOf(alike, times)], alike.Key.MustBeCertain)),
    ];

    private FeedLeg LegOf(IEnumerable<Source> alike, int times)
    {
        ImmutableArray<SourcePart> parts = [.. alike.Select(static source => source.Part)];
        return new FeedLeg(parts, [.. parts.Select(part => part.LimitOf(headroom, times))]);
    }
}
