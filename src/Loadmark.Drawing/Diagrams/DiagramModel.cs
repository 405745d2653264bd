using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>A rig with everything that is said of its parts, looked up once.</summary>
internal sealed class DiagramModel
{
    private readonly IReadOnlyDictionary<string, Severity> _worst;
    private readonly Dictionary<int, int> _homes = [];
    private readonly Dictionary<int, int> _unfed = [];
    private readonly Dictionary<OutletRef, OutletLoading> _loadings = [];
    private readonly Dictionary<string, List<TotalLoading>> _totals = new(StringComparer.Ordinal);

    public DiagramModel(WiredRig rig, CheckResult check, DiagramOptions options)
    {
        Rig = rig;
        Check = check;
        Options = options;
        Rows = RigRows.Of(rig);
        Part = new DiagramPart(0, rig.Outlets.Count, 0, Rows.Unfed.Length);
        for (var outlet = 0; outlet < Rows.FeedsAt.Length; outlet++)
        {
            foreach (var load in Rows.FeedsAt[outlet].SelectMany(static feed => feed.Here))
                _homes.Add(load.Index, outlet);
        }

        for (var place = 0; place < Rows.Unfed.Length; place++)
            _unfed.Add(Rows.Unfed[place].Index, place);
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

    /// <summary>What of the rig is in the picture; all of it where nothing else is said.</summary>
    public DiagramPart Part { get; init; }

    /// <summary>Whether a load stands in the picture.</summary>
    public bool Shows(WiredLoad load) => _homes.TryGetValue(load.Index, out var outlet)
        ? Part.HasOutlet(outlet)
        : _unfed.TryGetValue(load.Index, out var place) && place >= Part.FirstUnfed && place < Part.EndUnfed;

    /// <summary>Lays pieces of text into lines: all of it where the picture tells all, else what has room.</summary>
    /// <param name="pieces">The pieces, in order.</param>
    /// <param name="width">The width of a line, px.</param>
    /// <param name="lines">How many lines there are where it does not tell all.</param>
    /// <param name="beside">What the first line is shorter by, px.</param>
    public List<List<PlacedPiece>> Lay(IEnumerable<TextPiece> pieces, double width, int lines, double beside = 0) =>
        Options.TellsAll ? TextFlow.LayAll(pieces, width, beside) : TextFlow.Lay(pieces, width, lines, beside);

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
