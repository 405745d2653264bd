using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Buying;

/// <summary>
/// How much supplies can give at the voltages of a rig's loads. It depends on the supplies alone and not on the wiring, so that
/// one supply more is never less to spare, and options can be compared before they are planned.
/// </summary>
internal sealed class SpareCapacity
{
    private readonly LoadRating[] _loads;
    private readonly bool _countsEveryVoltage;

    /// <summary>Looks at the loads.</summary>
    /// <param name="loads">The loads, without the inputs of supplies.</param>
    /// <param name="countsEveryVoltage">Whether every d.c. voltage is of use, since outlets can be put in series or feed supplies.</param>
    public SpareCapacity(IEnumerable<LoadRating> loads, bool countsEveryVoltage)
    {
        _loads = [.. loads];
        _countsEveryVoltage = countsEveryVoltage;
    }

    /// <summary>
    /// What all loads draw when they run, each at the lowest voltage it is printed for, in watts; less where nothing tells a draw.
    /// </summary>
    public decimal DrawnWatts => _loads.Sum(static load => (load.Running?.Value.Value ?? 0) * load.Voltage.Value.Low.Value);

    /// <summary>
    /// The most that a supply can give, in watts: each outlet at the setting that gives most, kept within the totals of banks and
    /// of the supply. A total in amps is given out at the highest voltages first. What nothing tells counts as nothing; so does what a
    /// supply that must be fed passes on.
    /// </summary>
    public decimal WattsOf(Supply supply)
    {
        if (SupplyInput.MustBeFed(supply))
            return 0;
        var outlets = supply.Outlets.Items
            .Select(outlet => (outlet.Bank, Share: Best(OutletRating.Of(supply, outlet)))).Where(static outlet => outlet.Share.Watts > 0)
            .ToList();
        var shares = new List<Share>();
        foreach (var bank in outlets.GroupBy(static outlet => outlet.Bank, StringComparer.Ordinal))
        {
            var total = supply.Banks.Items.FirstOrDefault(one => one.Name == bank.Key)?.Total;
            shares.AddRange(Within(total, bank.Select(static outlet => outlet.Share)));
        }

        return Within(SupplyRating.Of(supply).Total, shares).Sum(static share => share.Watts);
    }

    private static List<Share> Within(SupplyTotal? total, IEnumerable<Share> shares)
    {
        var kept = new List<Share>();
        var amps = total?.Amps?.Value ?? decimal.MaxValue;
        var watts = total?.Watts?.Value ?? decimal.MaxValue;
        foreach (var share in shares.OrderByDescending(static share => share.Volts))
        {
            var most = Math.Min(share.Amps, amps);
            if (share.Volts * most > watts)
                most = watts / share.Volts;
            amps -= most;
            watts -= share.Volts * most;
            kept.Add(share with { Amps = most });
        }

        return kept;
    }

    private Share Best(OutletRating outlet)
    {
        var best = default(Share);
        foreach (var mode in outlet.Modes)
        {
            foreach (var volts in SettingsOf(outlet, mode))
            {
                var share = new Share(volts, mode.LimitAt(new Volts(volts))?.Value.Value ?? 0);
                if (share.Watts > best.Watts)
                    best = share;
            }
        }

        return best;
    }

    /// <summary>The voltages of a mode that are of use: those that suit a load, of a range its ends as far as they do.</summary>
    private IEnumerable<decimal> SettingsOf(OutletRating outlet, OutletMode mode)
    {
        if (mode.Volts is not { } range)
            yield break;
        if (_countsEveryVoltage && outlet.Form.Value == SupplyForm.Direct)
            yield return range.High.Value;
        foreach (var load in _loads)
        {
            if (VoltageSpan.Of(load).Overlap(range.Low.Value, range.High.Value) is { } span
                && Suitability.Of(FeedPoint.At(outlet, new StandingVoltage(new Volts(span.High), null, null)), load).Form != Fit.No)
                yield return span.High;
        }
    }

    /// <summary>What an outlet gives.</summary>
    /// <param name="Volts">Its voltage.</param>
    /// <param name="Amps">Its current.</param>
    private readonly record struct Share(decimal Volts, decimal Amps)
    {
        public decimal Watts => Volts * Amps;
    }
}
