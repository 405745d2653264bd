using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

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

    /// <summary>Looks at supplies.</summary>
    /// <param name="problem">What there is to feed, and the leads for it.</param>
    /// <param name="carriers">All supplies that may be used.</param>
    public PairGain(BuyProblem problem, IReadOnlyList<Carrier> carriers) => (_problem, _carriers) = (problem, carriers);

    /// <summary>The most that all pairs can gain: an upper bound.</summary>
    /// <param name="way">How the other outlets feed loads.</param>
    /// <param name="worths">What each load of a demand is worth; not negative.</param>
    public long Of(CarryingWay way, long[] worths)
    {
        var gain = 0L;
        foreach (var leads in _problem.Leads.Pairs.CountBy(static lead => lead))
            gain += leads.Value * (leads.Key.Type == LeadType.Parallel ? InParallel(way, worths, leads.Key.Plugs) : InSeries(way, worths, leads.Key.Plugs));
        return gain;
    }

    private long InParallel(CarryingWay way, long[] worths, int plugs)
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
                    if ((one == other && first.Count < 2) || !first.Rating.Modes.SequenceEqual(second.Rating.Modes))
                        continue;
                    var worth = plugs * WorthiestAt(worths, first.Rating.Polarity.Value, SpansOf(first).Select(static span => (span, default(VoltageSpan))));
                    if (worth == 0)
                        continue;
                    whole ??= carrier.Most(way, worths);
                    most = Math.Max(most, carrier.Most(way, worths, [one, other]) + worth - whole.Value);
                }
            }
        }

        return most;
    }

    private long InSeries(CarryingWay way, long[] worths, int plugs)
    {
        // Of outlets with the same voltages only the one that is missed least.
        var losses = new List<(Polarity Polarity, List<VoltageSpan> Spans, long Loss)>();
        foreach (var carrier in _carriers)
        {
            var whole = (long?)null;
            for (var kind = 0; kind < carrier.Kinds.Count; kind++)
            {
                var outlet = carrier.Kinds[kind];
                if (outlet.Rating.Form.Value != SupplyForm.Direct)
                    continue;
                var spans = SpansOf(outlet);
                var known = losses.FindIndex(one => one.Polarity == outlet.Rating.Polarity.Value && one.Spans.SequenceEqual(spans));
                if (known >= 0 && losses[known].Loss == 0)
                    continue;
                whole ??= carrier.Most(way, worths);
                var loss = whole.Value - carrier.Most(way, worths, [kind]);
                if (known < 0)
                    losses.Add((outlet.Rating.Polarity.Value, spans, loss));
                else if (loss < losses[known].Loss)
                    losses[known] = losses[known] with { Loss = loss };
            }
        }

        var most = 0L;
        foreach (var one in losses)
        {
            foreach (var other in losses.Where(other => other.Polarity == one.Polarity))
                most = Math.Max(most, (plugs * WorthiestAt(worths, one.Polarity, one.Spans.SelectMany(first => other.Spans.Select(second => (first, second))))) - one.Loss - other.Loss);
        }

        return most;
    }

    /// <summary>The worthiest load that suits the sum of two voltages. No lead that joins outlets exchanges centre and sleeve.</summary>
    private long WorthiestAt(long[] worths, Polarity polarity, IEnumerable<(VoltageSpan First, VoltageSpan Second)> sums)
    {
        var spans = sums.ToList();
        var most = 0L;
        for (var demand = 0; demand < worths.Length; demand++)
        {
            var load = _problem.Demands[demand].Rating;
            if (worths[demand] > most && load.Polarity.Value == polarity
                && spans.Exists(sum => VoltageSpan.Of(load).Overlap(sum.First.Low + sum.Second.Low, sum.First.High + sum.Second.High) is not null))
                most = worths[demand];
        }

        return most;
    }

    private static List<VoltageSpan> SpansOf(OutletKind kind) =>
        [.. kind.Rating.Modes.Select(static mode => mode.Volts).OfType<QuantityRange<Volt>>().Select(static range => new VoltageSpan(range.Low.Value, range.High.Value)).Distinct()];
}
