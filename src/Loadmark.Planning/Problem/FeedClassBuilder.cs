using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>Sorts outlets at their settings into the classes that leads for several loads or outlets take from.</summary>
internal sealed class FeedClassBuilder(ImmutableArray<Source> sources, decimal headroom)
{
    /// <summary>Single outlets.</summary>
    public ImmutableArray<FeedClass> Singles() => Classes(sources, Joint.None, 1);

    /// <summary>Pairs of alike d.c. outlets of one supply, at one voltage, side by side: their limits add.</summary>
    public ImmutableArray<FeedClass> ParallelPairs() => Classes(
        sources.Where(static source => source.Group.Count >= 2 && source.Limit is not null && source.Point.Form == SupplyForm.Direct),
        Joint.Parallel,
        2);

    /// <summary>
    /// Pairs of d.c. outlets of one polarity that each have a return of their own: the voltages add, each limit counts. Of
    /// two in different order only one is kept, unless they end in different plugs: the first's counts.
    /// </summary>
    public ImmutableArray<FeedClass> SeriesPairs()
    {
        var legs = sources.Where(static source => source.Group.SharedReturn is null && source.Point.Form == SupplyForm.Direct)
            .GroupBy(static source => (source.Point, source.Part.Setting.OpenVolts, source.Part.Setting.IsOpenAssumed, source.Limit?.Scale))
            .Select(alike => (alike.First().Part.Setting, alike.Key.Point, Leg: LegOf(alike, 1), Outlets: alike.Sum(source => source.Group.Count))).ToList();
        var classes = ImmutableArray.CreateBuilder<FeedClass>();
        for (var one = 0; one < legs.Count; one++)
        {
            for (var other = 0; other < legs.Count; other++)
            {
                var (first, second) = (legs[one], legs[other]);
                if (first.Point.Polarity != second.Point.Polarity || (one == other && first.Outlets < 2))
                    continue;
                if (other >= one || first.Point.Plug != second.Point.Plug)
                    classes.Add(new FeedClass(Joint.Series, InSeries(first.Setting, second.Setting, first.Point), null, [first.Leg, second.Leg]));
            }
        }

        return classes.ToImmutable();
    }

    private static FeedPoint InSeries(Setting first, Setting second, FeedPoint point)
    {
        var volts = first.Volts + second.Volts;
        if (first.IsOpenAssumed || second.IsOpenAssumed)
            return point with { Volts = volts, Highest = volts };
        var open = (first.OpenVolts ?? first.Volts) + (second.OpenVolts ?? second.Volts);
        return point with { Volts = volts, Highest = Volts.Max(volts, open) };
    }

    private ImmutableArray<FeedClass> Classes(IEnumerable<Source> alone, Joint joined, int times) =>
    [
        .. alone.GroupBy(source => (source.Point, source.Group.SharedReturn, source.Limit?.Scale))
            .Select(alike => new FeedClass(joined, alike.Key.Point, alike.Key.SharedReturn, [LegOf(alike, times)])),
    ];

    private FeedLeg LegOf(IEnumerable<Source> alike, int times)
    {
        ImmutableArray<SourcePart> parts = [.. alike.Select(static source => source.Part)];
        return new FeedLeg(parts, [.. parts.Select(part => part.LimitOf(headroom, times))]);
    }
}
