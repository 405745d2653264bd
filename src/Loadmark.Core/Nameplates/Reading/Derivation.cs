using System.Collections.Immutable;
using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Computes the figure a mode does not print, and finds printed figures that do not agree. P = V·I throughout.</summary>
internal struct Derivation
{
    /// <summary>How far printed watts may be from volts times amps: labels round, and by less than this.</summary>
    private const decimal Tolerance = 0.10m;

    private bool _amps;
    private bool _watts;
    private bool _volts;
    private List<string>? _conflicts;

    /// <summary>Which figures were computed, by key.</summary>
    public readonly ImmutableArray<string> Keys
    {
        get
        {
            if (!_amps && !_watts && !_volts)
                return [];
            if (_watts && !_amps && !_volts)
                return ["watts"];
            var keys = ImmutableArray.CreateBuilder<string>(3);
            if (_amps)
                keys.Add("amps");
            if (_watts)
                keys.Add("watts");
            if (_volts)
                keys.Add("volts");
            return keys.ToImmutable();
        }
    }

    /// <summary>The disagreements found, each as a sentence.</summary>
    public readonly ImmutableArray<string> Conflicts => _conflicts is null ? [] : [.. _conflicts];

    /// <summary>Makes modes of the groups.</summary>
    public ImmutableArray<Mode> Modes(IReadOnlyList<FigureGroup> groups)
    {
        if (groups.Count == 0)
            return [];
        var modes = ImmutableArray.CreateBuilder<Mode>(groups.Count);
        for (var i = 0; i < groups.Count; i++)
        {
            if (groups[i].Volts != null || groups[i].Amps != null || groups[i].Watts != null)
                modes.Add(ModeOf(groups[i]));
        }

        return modes.DrainToImmutable();
    }

    private Mode ModeOf(FigureGroup group)
    {
        var volts = group.Volts?.As<Volt>();
        var amps = group.Amps?.AsStated<Ampere>();
        var watts = group.Watts?.AsStated<Watt>();
        var mayDeriveAmps = amps == null && !group.AmpsDisputed;
        var mayDeriveWatts = watts == null && !group.WattsDisputed;

        if (volts is { } voltage && watts is { } power && mayDeriveAmps && voltage.Low > default(Volts))
        {
            // At the low end of a range the current is highest: the safe side.
            amps = new Figure<Amps>(power.Value / voltage.Low, Origin.Derived);
            _amps = true;
        }
        else if (volts is { IsSingle: true } single && amps is { } current && mayDeriveWatts)
        {
            watts = new Figure<Watts>(single.Low * current.Value, Origin.Derived);
            _watts = true;
        }
        else if (volts == null && watts is { } drawn && amps is { } taken)
        {
            volts = QuantityRange<Volt>.Single(drawn.Value / taken.Value);
            _volts = true;
        }
        else if (volts is { } printed && amps is { } stated && watts is { } claimed)
        {
            Compare(printed, stated.Value, claimed.Value);
        }

        return new Mode(volts, amps, watts)
        {
            AmpsFrom = group.Amps is { } range && range.Low < range.High ? new Amps(range.Low) : null,
            Hertz = group.Hertz?.As<Hertz>(),
            VoltsPlace = group.Volts?.Place,
            AmpsPlace = group.Amps?.Place,
            WattsPlace = group.Watts?.Place,
        };
    }

    private void Compare(QuantityRange<Volt> volts, Amps amps, Watts watts)
    {
        var low = volts.Low * amps;
        var high = volts.High * amps;
        if (watts >= low - (low * Tolerance) && watts <= high + (high * Tolerance))
            return;

        var product = volts.IsSingle ? $"{low}" : $"{low} to {high}";
        var sentence = volts.IsSingle
            ? $"{watts} is printed, but {volts} × {amps} = {product}"
            : $"{watts} is printed, but {amps} at {volts} is {product}";
        _conflicts ??= [];
        if (!_conflicts.Contains(sentence))
            _conflicts.Add(sentence);
    }
}
