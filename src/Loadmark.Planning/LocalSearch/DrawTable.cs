using Loadmark.Planning.Problem;

namespace Loadmark.Planning.LocalSearch;

/// <summary>Draws of all groups of loads in whole millionths, reckoned once for all outlets at which they are the same.</summary>
internal sealed class DrawTable(IReadOnlyList<LoadGroup> loads)
{
    private readonly Dictionary<(DrawScale Scale, Volts Fed), LegDraws> _limits = [];
    private readonly Dictionary<(decimal Factor, Volts Fed), TotalDraws> _totals = [];

    /// <summary>What each group counts against an outlet's limit.</summary>
    public LegDraws Against(DrawScale scale, Volts fed)
    {
        if (!_limits.TryGetValue((scale, fed), out var draws))
        {
            draws = new LegDraws(
                [.. loads.Select(load => scale.RunOf(load, fed))],
                [.. loads.Select(load => scale.StartOf(load, fed))],
                [.. loads.Select(load => scale.AfterSurgeOf(load, fed))]);
            _limits.Add((scale, fed), draws);
        }

        return draws;
    }

    /// <summary>What each group counts against a total.</summary>
    /// <param name="factor">By what amps are multiplied.</param>
    /// <param name="fed">The voltage the loads are fed.</param>
    public TotalDraws Against(decimal factor, Volts fed)
    {
        if (!_totals.TryGetValue((factor, fed), out var draws))
        {
            draws = new TotalDraws(
                [.. loads.Select(load => MicroUnits.Draw(load.DrawAt(fed).Run * factor))],
                [.. loads.Select(load => MicroUnits.Draw(load.DrawAt(fed).Start * factor))]);
            _totals.Add((factor, fed), draws);
        }

        return draws;
    }
}
