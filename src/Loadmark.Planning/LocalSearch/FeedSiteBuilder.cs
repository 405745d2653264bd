using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>Lists the sites of feeds; an instance serves once.</summary>
internal sealed class FeedSiteBuilder(WiringSpace space)
{
    private readonly DrawTable _draws = new(space.Problem.Loads);

    /// <summary>Single outlets at every setting, then the pairs that leads on hand can join.</summary>
    public IEnumerable<FeedSite> Build()
    {
        foreach (var source in space.Problem.Singles)
        {
            var alone = new FeedClass(
                Joint.None,
                source.Point,
                source.Group.SharedReturn,
                [new FeedLeg([source.Part], [source.Limit])],
                source.Group.MustBeCertain);
            yield return New(alone, [0]);
        }

        foreach (var from in space.Problem.Slots.DistinctBy(static slot => slot.Kind).SelectMany(static slot => slot.Classes)
            .Where(static from => from.Joined != Joint.None).Distinct())
        {
            if (!space.Problem.Loads.Any(load => space.Ends.Any(ends => from.CostOf(load, ends) is not null)))
                continue;
            for (var one = 0; one < from.Legs[0].Parts.Length; one++)
            {
                if (from.Legs.Length == 1)
                {
                    yield return New(from, [one]);
                    continue;
                }

                for (var other = from.LegsAreAlike ? one : 0; other < from.Legs[1].Parts.Length; other++)
                    yield return New(from, [one, other]);
            }
        }
    }

    private FeedSite New(FeedClass from, int[] places) => new(
        from,
        [.. from.Legs.Zip(places, static (leg, place) => leg.Parts[place])],
        [.. from.Legs.Zip(places, static (leg, place) => leg.Limits[place])],
        space.Problem,
        space.Returns,
        space.Ends,
        space.Kinds,
        _draws);
}
