using Loadmark.Planning.Objective;

namespace Loadmark.Planning.LocalSearch;

/// <summary>
/// What one more of each level costs while a wiring is improved: mostly more than all that the levels after it can win, so
/// that the cheapest wiring is the best; yet not so much more that nothing is ever traded.
/// </summary>
internal sealed class Weights
{
    private readonly double[] _weights;
    private readonly double _scatter;

    /// <summary>Weighs the levels for a number of loads.</summary>
    public Weights(int loads)
    {
        const double sharing = 0.3;
        const double special = 2;
        const double noisy = 6;
        const double scatter = 0.15;
        var noise = noisy * (8 + (loads / 4));
        _scatter = scatter * noise;
        _weights = new double[Enum.GetValues<Level>().Length];
        _weights[(int)Level.Unfed] = 150 * noise;
        _weights[(int)Level.UnfedFirst] = 50 * noise;
        _weights[(int)Level.UnfedSecond] = 16 * noise;
        _weights[(int)Level.Doubtful] = 8 * noise;
        _weights[(int)Level.Moves] = 6 * noise;
        _weights[(int)Level.Thin] = 4 * noise;
        _weights[(int)Level.Margins] = 2 * noise;
        _weights[(int)Level.Noise] = noise;
        _weights[(int)Level.NoisyLoads] = noisy;
        _weights[(int)Level.SpecialLeads] = special;
        _weights[(int)Level.Sharing] = sharing;
        _weights[(int)Level.Capacity] = 0.05 / 1_000_000;
    }

    /// <summary>What one more of a level costs.</summary>
    public double this[Level level] => _weights[(int)level];

    /// <summary>What a wiring costs where nothing counts but that everything is fed.</summary>
    public double CrowdingCostOf(LiveWiring wiring)
    {
        const double fullness = 0.5;
        return _weights[(int)Level.Unfed] * (wiring.Levels[Level.Unfed] - (fullness * wiring.Levels.Fullness));
    }

    /// <summary>What a wiring costs.</summary>
    public double CostOf(LiveWiring wiring)
    {
        var levels = wiring.Levels.Values;
        var cost = _scatter * wiring.Levels.Scatter;
        for (var level = 0; level < levels.Length; level++)
            cost += _weights[level] * levels[level];
        return cost;
    }
}
