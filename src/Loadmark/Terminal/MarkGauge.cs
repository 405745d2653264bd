using Loadmark.Core.Checks;

namespace Loadmark.Terminal;

/// <summary>
/// The mark gauge of an outlet laid on its side: filled to the running draw, lighter to the starting draw, a tick where
/// the headroom begins, the mark at the limit, and past the mark whatever is asked beyond it.
/// </summary>
/// <remarks>
/// Rounding never tells a lie about the two marks: a draw within the headroom stays short of the tick, one beyond it
/// passes the tick, one at the limit ends at the mark and one over it passes the mark; a draw above
/// zero shows. Past the mark the scale ends after a few cells.
/// </remarks>
internal sealed class MarkGauge
{
    /// <summary>How many cells there are past the mark.</summary>
    public const int CellsPast = 3;

    /// <summary>Finer than any figure printed, coarser than the rounding of divisions.</summary>
    private const int Decimals = 12;

    private static readonly GaugeCell[] None = [];

    private readonly int _cells;
    private readonly int _tick;
    private readonly decimal _headroom;

    /// <summary>Sets up gauges that are alike.</summary>
    /// <param name="cells">How many cells the limit takes, at least 2.</param>
    /// <param name="headroom">The share of the limit that is to stay free, 0 to below 1; no tick when 0.</param>
    public MarkGauge(int cells, decimal headroom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cells, 2);
        _cells = cells;
        _headroom = headroom;
        _tick = headroom > 0 ? Math.Clamp((int)Math.Round((1 - headroom) * cells), 1, cells - 1) : cells;
    }

    private bool HasTick => _tick < _cells;

    /// <summary>The cells of an outlet's gauge from left to right; none when its limit is not known or zero.</summary>
    public GaugeCell[] Of(OutletLoading outlet)
    {
        if (outlet.Limit is not { Value: > 0 } limit)
            return None;

        var run = outlet.Run is { } running ? Filled(running / limit) : 0;
        var start = outlet.Start is { } starting ? Filled(starting / limit) : run;
        var gauge = new GaugeCell[Math.Max(_cells, Math.Max(run, start)) + (HasTick ? 2 : 1)];
        var at = 0;
        for (var cell = 1; cell <= Math.Max(_cells, Math.Max(run, start)); cell++)
        {
            var past = cell > _cells;
            if (cell <= run)
                gauge[at++] = past ? GaugeCell.RunPast : GaugeCell.Run;
            else if (cell <= start)
                gauge[at++] = past ? GaugeCell.StartPast : GaugeCell.Start;
            else if (cell == 1 && (outlet.Run is null || outlet.Start is null))
                gauge[at++] = GaugeCell.Unknown;
            else
                gauge[at++] = GaugeCell.Empty;

            if (HasTick && cell == _tick)
                gauge[at++] = GaugeCell.Tick;
            if (cell == _cells)
                gauge[at++] = GaugeCell.Mark;
        }

        return gauge;
    }

    /// <summary>How many cells a draw fills, as its share of the limit.</summary>
    private int Filled(decimal share)
    {
        // Two loads of 5 W on 10 W come to the limit, whatever the last digit of their divisions says.
        share = Math.Round(share, Decimals);
        if (share <= 0)
            return 0;
        if (share > 1)
            return _cells + Math.Clamp((int)Math.Round(Math.Min((share - 1) * _cells, CellsPast)), 1, CellsPast);

        var cells = (int)Math.Round(share * _cells, MidpointRounding.AwayFromZero);
        return share <= 1 - _headroom ? Math.Clamp(cells, 1, _tick) : Math.Clamp(cells, HasTick ? _tick + 1 : 1, _cells);
    }
}
