using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Drawing.Diagrams;

/// <summary>A rig with everything that is said of its parts, looked up once.</summary>
internal sealed class DiagramModel
{
    private readonly IReadOnlyDictionary<string, Severity> _worst;
    private readonly Dictionary<OutletRef, OutletLoading> _loadings = [];
    private readonly Dictionary<string, List<TotalLoading>> _totals = new(StringComparer.Ordinal);

    public DiagramModel(WiredRig rig, CheckResult check, DiagramOptions options)
    {
        Rig = rig;
        Check = check;
        Options = options;
        Rows = RigRows.Of(rig);
        _worst = WorstBySubject.Of(check);
        foreach (var loading in check.Outlets)
            _loadings[loading.Outlet] = loading;
        foreach (var total in check.Totals)
        {
            if (!_totals.TryGetValue(total.Supply, out var totals))
                _totals.Add(total.Supply, totals = []);
            totals.Add(total);
        }
    }

    public WiredRig Rig { get; }

    public CheckResult Check { get; }

    public DiagramOptions Options { get; }

    public RigRows Rows { get; }

    /// <summary>The worst finding that arises at a subject; null for none, or only notes.</summary>
    public Severity? WorstOf(string subject) => _worst.TryGetValue(subject, out var worst) ? worst : null;

    /// <summary>What an outlet gives and what is asked of it.</summary>
    /// <exception cref="ArgumentException">The check is of another rig.</exception>
    public OutletLoading LoadingOf(WiredOutlet outlet) => _loadings.TryGetValue(outlet.Rating.Reference, out var loading)
        ? loading
        : throw new ArgumentException($"The check does not have the outlet {outlet.Name}: it is of another rig.", nameof(outlet));

    /// <summary>
    /// What a supply can give in all, its banks first; a printed total without any load on it counts as well.
    /// </summary>
    public IReadOnlyList<TotalLoading> TotalsOf(SupplyRating supply)
    {
        if (_totals.TryGetValue(supply.Supply.Id, out var totals))
            return totals;
        if (supply.Total is not { } limit)
            return [];

        var none = limit.Watts is null ? new SupplyTotal(Amps: default(Amps), null) : new SupplyTotal(null, default(Watts));
        return [new TotalLoading(
            supply.Supply.Id,
            $"{supply.Supply.Id} in all",
            limit.Watts is null ? limit : new SupplyTotal(null, limit.Watts),
            none,
            none,
            IsWhole: true)];
    }

    /// <summary>What was read at an outlet; null for nothing.</summary>
    public OutletValues? ReadingOf(WiredOutlet outlet) => Options.Readings?.Outlets.GetValueOrDefault(outlet.Name);

    /// <summary>What was read at a load; null for nothing.</summary>
    public LoadValues? ReadingOf(WiredLoad load) => Options.Readings?.Loads.GetValueOrDefault(load.Id);
}
