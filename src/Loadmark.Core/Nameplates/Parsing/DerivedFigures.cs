using System.Collections.Immutable;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>
/// Computes the figure a mode does not print, and finds printed figures that do not agree: P = V·I for direct current, S = V·I with
/// effective values for alternating current, of which the power is not known and not more.
/// </summary>
internal struct DerivedFigures
{
    /// <summary>How far printed watts may be from volts times amps: labels round, and by less than this.</summary>
    private const decimal Tolerance = 0.10m;

    private bool _amps;
    private bool _watts;
    private bool _volts;
    private bool _voltAmps;
    private List<string>? _conflicts;

    /// <summary>Which figures were computed, by key.</summary>
    public readonly ImmutableArray<string> Keys
    {
        get
        {
            if (!_amps && !_watts && !_volts && !_voltAmps)
                return [];
            if (_watts && !_amps && !_volts && !_voltAmps)
                return ["watts"];
            var keys = ImmutableArray.CreateBuilder<string>(4);
            if (_amps)
                keys.Add("amps");
            if (_watts)
                keys.Add("watts");
            if (_volts)
                keys.Add("volts");
            if (_voltAmps)
                keys.Add("voltAmps");
            return keys.ToImmutable();
        }
    }

    /// <summary>The disagreements found, each as a sentence.</summary>
    public readonly ImmutableArray<string> Conflicts => _conflicts is null ? [] : [.. _conflicts];

    /// <summary>Makes modes of the groups.</summary>
    /// <param name="groups">The groups.</param>
    /// <param name="form">Direct or alternating, where the label says; ambiguous where it says both.</param>
    public ImmutableArray<Mode> Modes(IReadOnlyList<FigureGroup> groups, Field<SupplyForm> form)
    {
        if (groups.Count == 0)
            return [];
        var modes = ImmutableArray.CreateBuilder<Mode>(groups.Count);
        for (var i = 0; i < groups.Count; i++)
        {
            if (groups[i].IsMode)
                modes.Add(ModeOf(groups[i], form));
        }

        return modes.DrainToImmutable();
    }

    private Mode ModeOf(FigureGroup group, Field<SupplyForm> form)
    {
        var isAlternating = form.Value == SupplyForm.Alternating;
        var volts = group.Volts?.As<Volt>();
        var amps = group.Amps?.AsStated<Ampere>();
        var watts = group.Watts?.AsStated<Watt>();
        var voltAmps = group.VoltAmps?.AsStated<VoltAmpere>();
        var mayDeriveAmps = amps == null && !group.AmpsDisputed;
        var mayDeriveWatts = watts == null && !group.WattsDisputed;

        if (isAlternating && volts is { Low.Value: > 0 } low && voltAmps is { } apparent && mayDeriveAmps)
        {
            // Exact for alternating current. A d.c. output gives less than its transformer's VA come to, so there nothing is derived.
            amps = new Figure<Amps>(apparent.Value / low.Low, Origin.Derived);
            _amps = true;
        }
        else if (volts is { } voltage && watts is { } power && mayDeriveAmps && voltage.Low > default(Volts))
        {
            // At the low end of a range the current is highest: the safe side.
            amps = new Figure<Amps>(power.Value / voltage.Low, Origin.Derived);
            _amps = true;
        }
        else if (volts is { IsSingle: true } single && amps is { } current && mayDeriveWatts)
        {
            DeriveProduct(single.Low * current.Value, form, ref watts, ref voltAmps);
        }
        else if (volts == null && watts is { } drawn && amps is { } taken)
        {
            volts = QuantityRange<Volt>.Single(drawn.Value / taken.Value);
            _volts = true;
        }
        else if (volts is { } printed && amps is { } stated && watts is { } claimed)
        {
            Compare(printed, stated.Value, claimed.Value, isAlternating);
        }

        if (isAlternating && group is { Volts: { } given, Amps: { } drawnAt, VoltAmps: { } said })
            CompareApparent(given.As<Volt>(), new Amps(drawnAt.High), new VoltAmps(said.High));

        return new Mode(volts, amps, watts)
        {
            VoltAmps = voltAmps,
            AmpsFrom = group.Amps is { } range && range.Low < range.High ? new Amps(range.Low) : null,
            Hertz = group.Hertz?.As<Hertz>(),
            VoltsPlace = group.Volts?.Place,
            AmpsPlace = group.Amps?.Place,
            WattsPlace = (group.Watts ?? group.VoltAmps)?.Place,
        };
    }

    /// <summary>
    /// V·I is the apparent power of either kind of current, and the power of direct current: also where nothing says which it is, unless VA
    /// are printed.
    /// </summary>
    private void DeriveProduct(Watts product, Field<SupplyForm> form, ref Figure<Watts>? watts, ref Figure<VoltAmps>? voltAmps)
    {
        if (form.Value == SupplyForm.Direct || (form.State == FieldState.Absent && voltAmps is null))
        {
            watts = new Figure<Watts>(product, Origin.Derived);
            _watts = true;
        }
        else if (form.State != FieldState.Absent && voltAmps is null)
        {
            voltAmps = new Figure<VoltAmps>(new VoltAmps(product.Value), Origin.Derived);
            _voltAmps = true;
        }
    }

    private void Compare(QuantityRange<Volt> volts, Amps amps, Watts watts, bool isAlternating)
    {
        var low = volts.Low * amps;
        var high = volts.High * amps;

        // The power of alternating current may be any share of V·I.
        if ((isAlternating || watts >= low - (low * Tolerance)) && watts <= high + (high * Tolerance))
            return;
        Tell(watts.ToString(), volts, amps, volts.IsSingle ? $"{low}" : $"{low} to {high}");
    }

    private void CompareApparent(QuantityRange<Volt> volts, Amps amps, VoltAmps power)
    {
        var low = volts.Low.Value * amps.Value;
        var high = volts.High.Value * amps.Value;
        if (power.Value < low - (low * Tolerance) || power.Value > high + (high * Tolerance))
            Tell(power.ToString(), volts, amps, volts.IsSingle ? $"{new VoltAmps(low)}" : $"{new VoltAmps(low)} to {new VoltAmps(high)}");
    }

    private void Tell(string printed, QuantityRange<Volt> volts, Amps amps, string product)
    {
        var sentence = volts.IsSingle
            ? $"{printed} is printed, but {volts} × {amps} = {product}"
            : $"{printed} is printed, but {amps} at {volts} is {product}";
        _conflicts ??= [];
        if (!_conflicts.Contains(sentence))
            _conflicts.Add(sentence);
    }
}
