using Loadmark.Circuits.Devices;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>The figures of an outlet as a source, with defaults where it gives none.</summary>
internal sealed class OutletModel
{
    /// <summary>A limit printed as nothing at all, A, so that it has a value.</summary>
    private const double LeastAmps = 1e-9;

    private readonly AssumptionList _assumptions;
    private readonly WiredOutlet _outlet;
    private readonly bool _openIsAssumed;

    public OutletModel(WiredOutlet outlet, Volts nominal, AssumptionList assumptions)
    {
        _outlet = outlet;
        _assumptions = assumptions;
        if (outlet.Supply.Regulated is null && outlet.Rating is { NoLoad: null, Outlet.SourceOhms: null })
            assumptions.Add("regulation", "regulated", outlet.Supply.Supply.Id, "common practice, no source");

        var open = OpenVoltage.Of(outlet, nominal);
        _openIsAssumed = open is { IsAssumed: true };
        if (_openIsAssumed)
            assumptions.Take(CircuitDefaults.NoLoadRatio, outlet.Name);
        Volts = (double)(open?.Value ?? nominal).Value;
        LimitAmps = outlet.Limit is { } limit ? Math.Max((double)limit.Value.Value, LeastAmps) : double.PositiveInfinity;
        SourceOhms = assumptions.AtLeast(
            Resistance((double)nominal.Value),
            outlet.Name,
            outlet.Feeds.Any(static feed => feed.Joined == Joint.Parallel)
                ? CircuitDefaults.LeastSharingOhms
                : CircuitDefaults.LeastSourceOhms);
        Overload = WayOf(outlet);
        if (Overload is not null && double.IsInfinity(LimitAmps))
            Overload = null;
    }

    /// <summary>The outlet's EMF, V.</summary>
    public double Volts { get; }

    /// <summary>Source resistance, Ω.</summary>
    public double SourceOhms { get; }

    /// <summary>Whether that is assumed, and not next to nothing as a regulator's.</summary>
    public bool SourceIsAssumed { get; private set; }

    /// <summary>Limit, A; infinite where none is known.</summary>
    public double LimitAmps { get; }

    /// <summary>How the outlet meets an overload; null for a plain source behind its resistance.</summary>
    public OverloadWay? Overload { get; }

    /// <summary>The source as a device.</summary>
    public Circuits.Devices.OutletDevice Device(string name, string plus, string minus) => new(name, plus, minus, Volts, SourceOhms)
    {
        SoftStartSeconds = _assumptions.Take(CircuitDefaults.SoftStartSeconds, _outlet.Name),
        Overload = Overload switch
        {
            OverloadWay.CurrentLimit => OverloadBehaviour.ConstantCurrent,
            OverloadWay.Foldback => OverloadBehaviour.Foldback,
            OverloadWay.Hiccup => OverloadBehaviour.Hiccup,
            _ => OverloadBehaviour.None,
        },
        LimitAmps = LimitAmps,
        ShortAmps = Overload == OverloadWay.Foldback ? LimitAmps * _assumptions.Take(CircuitDefaults.FoldbackShare, _outlet.Name) : 0,
        TripSeconds = Overload == OverloadWay.Hiccup ? _assumptions.Take(CircuitDefaults.HiccupTripSeconds, _outlet.Name) : 0,
        OffSeconds = Overload == OverloadWay.Hiccup ? _assumptions.Take(CircuitDefaults.HiccupOffSeconds, _outlet.Name) : 0,
    };

    /// <summary>The fuse in series with it: its hold current is the outlet's limit.</summary>
    public ResettableFuse Fuse(string name, string plus, string minus) => ResettableFuse.FromDataSheet(
        name,
        plus,
        minus,
        _assumptions.Take(CircuitDefaults.FuseColdVolts, _outlet.Name) / LimitAmps,
        LimitAmps,
        LimitAmps * _assumptions.Take(CircuitDefaults.FuseTripRatio, _outlet.Name),
        LimitAmps * _assumptions.Take(CircuitDefaults.FuseTestRatio, _outlet.Name),
        _assumptions.Take(CircuitDefaults.FuseTestSeconds, _outlet.Name));

    /// <summary>As stated; else for an unregulated outlet what its no-load voltage loses to its nominal one at its rated current.</summary>
    private double Resistance(double nominal)
    {
        if (_outlet.Rating.Outlet.SourceOhms is { } stated)
            return (double)stated.Value;
        if (Volts > nominal && double.IsFinite(LimitAmps))
        {
            SourceIsAssumed = _openIsAssumed;
            return (Volts - nominal) / LimitAmps;
        }

        if (_outlet.Supply.Regulated is not false)
            return _assumptions.Take(CircuitDefaults.RegulatedSourceOhms, _outlet.Name);
        SourceIsAssumed = true;
        return _assumptions.Take(CircuitDefaults.UnregulatedSourceOhms, _outlet.Name);
    }

    private OverloadWay? WayOf(WiredOutlet outlet)
    {
        if (outlet.Supply.Supply.Overload is { } stated)
            return stated;
        if (outlet.Supply.Regulated is false || outlet.Rating.Form.Value == SupplyForm.Alternating)
        {
            _assumptions.Add("overload of an unregulated outlet", "no limit but its resistance", outlet.Name, "common practice, no source");
            return null;
        }

        _assumptions.Add("overload", "holds the current at its limit", outlet.Name, "common practice, no source");
        return OverloadWay.CurrentLimit;
    }
}
