using Loadmark.Core.Rigs;
using Loadmark.Planning.Problem;

namespace Loadmark.Planning.Buying;

/// <summary>
/// How much more loads can be worth because outlets are joined in pairs. A pair feeds its loads from two outlets that then feed
/// nothing else, so that often nothing is gained. What outlets are worth together grows ever less with each (an assignment is
/// submodular), so several pairs gain no more than each alone.
/// </summary>
internal sealed class PairGain
{
    private readonly BuyProblem _problem;
    private readonly IReadOnlyList<Carrier> _carriers;
    private readonly Dictionary<OutletKind, PairLook> _looks;
    private readonly Dictionary<(PairLook First, PairLook? Second, LeadEnds Ends), bool[]> _suits = [];

    /// <summary>Looks at supplies.</summary>
    /// <param name="problem">What there is to feed.</param>
    /// <param name="carriers">All supplies that may be used.</param>
    public PairGain(BuyProblem problem, IReadOnlyList<Carrier> carriers)
    {
        (_problem, _carriers) = (problem, carriers);
        var looks = new List<PairLook>();
        _looks = carriers.SelectMany(static carrier => carrier.Kinds)
            .Where(static kind => kind.Points.Any(static point => point.IsForJoining)).ToDictionary(static kind => kind, kind =>
        {
            if (looks.Find(look => look.IsThatOf(kind)) is not { } look)
                looks.Add(look = new PairLook(kind));
            return look;
        });
    }

    /// <summary>The most that pairs can gain: an upper bound.</summary>
    /// <param name="pairs">The series and parallel leads that join them.</param>
    /// <param name="way">How the other outlets feed loads.</param>
    /// <param name="worths">What each load of a demand is worth; not negative.</param>
    public long Of(IEnumerable<(LeadType Type, int Plugs, LeadEnds Ends)> pairs, CarryingWay way, long[] worths)
    {
        var gain = 0L;
        foreach (var leads in pairs.CountBy(static lead => lead))
        {
            var (type, plugs, ends) = leads.Key;
            gain += leads.Value * (type == LeadType.Parallel ? InParallel(way, worths, plugs, ends) : InSeries(way, worths, plugs, ends));
        }

        return gain;
    }

    private long InParallel(CarryingWay way, long[] worths, int plugs, LeadEnds ends)
    {
        var most = 0L;
        foreach (var carrier in _carriers)
        {
            var whole = (long?)null;
            for (var one = 0; one < carrier.Kinds.Count; one++)
            {
                for (var other = one; other < carrier.Kinds.Count; other++)
                {
                    var (first, second) = (carrier.Kinds[one], carrier.Kinds[other]);
                    if ((one == other && first.Count < 2) || !first.Rating.Modes.SequenceEqual(second.Rating.Modes)
                        || !_looks.TryGetValue(first, out var look))
                        continue;
                    var worth = plugs * WorthiestAt(worths, look, null, ends);
                    if (worth == 0)
                        continue;
                    whole ??= carrier.Most(way, worths);
                    most = Math.Max(most, carrier.Most(way, worths, [one, other]) + worth - whole.Value);
                }
            }
        }

        return most;
    }

    private long InSeries(CarryingWay way, long[] worths, int plugs, LeadEnds ends)
    {
        // Of outlets that put the same on a plug only the one that is missed least.
        var losses = new Dictionary<PairLook, long>();
        foreach (var carrier in _carriers)
        {
            var whole = (long?)null;
            for (var kind = 0; kind < carrier.Kinds.Count; kind++)
            {
                if (!_looks.TryGetValue(carrier.Kinds[kind], out var look) || (losses.TryGetValue(look, out var known) && known == 0))
                    continue;
                whole ??= carrier.Most(way, worths);
                var loss = whole.Value - carrier.Most(way, worths, [kind]);
                losses[look] = losses.TryGetValue(look, out known) ? Math.Min(known, loss) : loss;
            }
        }

        var most = 0L;
        foreach (var (one, loss) in losses)
        {
            foreach (var (other, second) in losses)
                most = Math.Max(most, (plugs * WorthiestAt(worths, one, other, ends)) - loss - second);
        }

        return most;
    }

    /// <summary>The worthiest load that suits an outlet in parallel with its like, or two in series.</summary>
    private long WorthiestAt(long[] worths, PairLook first, PairLook? second, LeadEnds ends)
    {
        if (!_suits.TryGetValue((first, second, ends), out var suits))
            _suits.Add((first, second, ends), suits = [.. _problem.Demands.Select(demand => first.Suits(second, ends, demand.Rating))]);
        var most = 0L;
        for (var demand = 0; demand < worths.Length; demand++)
        {
            if (suits[demand])
                most = Math.Max(most, worths[demand]);
        }

        return most;
    }
}
