using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Problem;

/// <summary>What one feed may take from: an outlet at a setting, or two of them joined.</summary>
internal sealed class Source
{
    private Source(Joint joined, ImmutableArray<SourcePart> parts, ImmutableArray<SourceLimit> limits)
    {
        Joined = joined;
        Parts = parts;
        Limits = limits;
    }

    /// <summary>How its outlets are joined.</summary>
    public Joint Joined { get; }

    /// <summary>Its outlets, one or two.</summary>
    public ImmutableArray<SourcePart> Parts { get; }

    /// <summary>The limits its loads must keep; fewer than its outlets where nothing tells one.</summary>
    public ImmutableArray<SourceLimit> Limits { get; }

    /// <summary>Whether several loads may be put on it: every limit is known.</summary>
    public bool AllowsSeveral { get; private init; } = true;

    /// <summary>The return it shares with other outlets; null when it has its own.</summary>
    public string? SharedReturn => Parts[0].Group.SharedReturn;

    /// <summary>One outlet.</summary>
    public static Source Single(OutletGroup group, Setting setting, decimal headroom) =>
        new(Joint.None, [new SourcePart(group, setting)], [.. LimitOf(group, setting, headroom, 1)])
        {
            AllowsSeveral = setting.Limit is not null,
        };

    /// <summary>Two alike outlets side by side: the limits add.</summary>
    public static Source Parallel(OutletGroup group, Setting setting, decimal headroom)
    {
        var part = new SourcePart(group, setting);
        return new Source(Joint.Parallel, [part, part], [.. LimitOf(group, setting, headroom, 2)]);
    }

    /// <summary>Two outlets one after the other: the voltages add, each limit counts.</summary>
    public static Source Series(SourcePart first, SourcePart second, decimal headroom) =>
        new(Joint.Series, [first, second], [.. LimitOf(first.Group, first.Setting, headroom, 1), .. LimitOf(second.Group, second.Setting, headroom, 1)])
        {
            AllowsSeveral = first.Setting.Limit is not null && second.Setting.Limit is not null,
        };

    /// <summary>How many outlets of a group it takes.</summary>
    public int CountOf(OutletGroup group) => Parts.Count(part => part.Group == group);

    /// <summary>How many findings of margin a load gives on it for voltage and plug; null when it must not be put on it.</summary>
    /// <param name="load">The load.</param>
    /// <param name="reverses">Whether the lead exchanges centre and sleeve.</param>
    public int? MarginsOf(LoadGroup load, bool reverses)
    {
        var outlet = Parts[0].Group.Rating;
        var rating = load.Rating;
        if (outlet.Form.Value != rating.Form.Value)
            return null;
        if (rating.Form.Value == SupplyForm.Direct && outlet.Polarity.Value == rating.Polarity.Value == reverses)
            return null;

        var fit = PlugFitting.Judge(outlet.Plug.Value, rating.Plug.Value);
        if (fit == PlugFit.None || !Limits.All(limit => limit.Bears(load)))
            return null;

        var margins = fit == PlugFit.Loose ? 1 : 0;
        var low = VoltageBand.Judge(Volts, rating.Voltage.Value);
        var high = VoltageBand.Judge(HighestVolts, rating.Voltage.Value);
        if (low is VoltageFit.TooLow or VoltageFit.TooHigh || high == VoltageFit.TooHigh)
            return null;
        return margins + (low == VoltageFit.Low ? 1 : 0) + (high == VoltageFit.High ? 1 : 0);
    }

    /// <summary>The nominal voltage.</summary>
    public Volts Volts => Joined == Joint.Series ? Parts[0].Setting.Volts + Parts[1].Setting.Volts : Parts[0].Setting.Volts;

    /// <summary>The nominal voltage, or that with nothing drawn where it is known and higher.</summary>
    private Volts HighestVolts
    {
        get
        {
            if (Parts.Any(part => part.Setting.IsOpenAssumed))
                return Volts;
            var open = Volts.Zero;
            foreach (var part in Parts)
            {
                var stands = part.Setting.OpenVolts ?? part.Setting.Volts;
                open = Joined == Joint.Series ? open + stands : Volts.Max(open, stands);
            }

            return Volts.Max(Volts, open);
        }
    }

    private static IEnumerable<SourceLimit> LimitOf(OutletGroup group, Setting setting, decimal headroom, int times)
    {
        if (setting.Limit is { } limit)
        {
            var surge = group.Rating.Outlet.Surge;
            yield return new SourceLimit(setting.Volts.Value, limit * times, headroom, surge?.Current.Value * times, surge?.Duration);
        }
    }
}
