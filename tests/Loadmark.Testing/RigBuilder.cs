using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Testing;

/// <summary>
/// Builds rigs in which every figure is stated, so that a rig without a fault has no finding at all; a test then takes
/// away or changes what it is about.
/// </summary>
public sealed class RigBuilder
{
    private readonly List<Load> _loads = [];
    private readonly List<Supply> _supplies = [];
    private readonly List<Lead> _leads = [];
    private readonly List<Feed> _feeds = [];

    public RigBuilder Load(string id, Nameplate? label, Func<Load, Load>? change = null)
    {
        var load = new Load
        {
            Id = id,
            Kind = new LoadKind("analog drive"),
            Label = label,
            Polarity = Polarity.CentreNegative,
            Plug = Plug.Common,
            Ground = GroundSide.Negative,
        };
        _loads.Add(change?.Invoke(load) ?? load);
        return this;
    }

    public RigBuilder Digital(string id, Nameplate label, Func<Load, Load>? change = null) =>
        Load(id, label, load => (change ?? (same => same))(load with { Kind = new LoadKind("digital") }));

    /// <summary>A supply for any mains whose outlets are isolated; the outlets that follow are its.</summary>
    public RigBuilder Supply(string id, Func<Supply, Supply>? change = null)
    {
        var supply = new Supply { Id = id, Isolated = true, Regulated = true, Mains = Plate.Mains(100, 240) };
        _supplies.Add(change?.Invoke(supply) ?? supply);
        return this;
    }

    public RigBuilder Outlet(string id, Nameplate label, Func<Outlet, Outlet>? change = null)
    {
        var outlet = new Outlet { Id = id, Label = label, Polarity = Polarity.CentreNegative, Plug = Plug.Common };
        _supplies[^1] = _supplies[^1] with { Outlets = [.. _supplies[^1].Outlets, change?.Invoke(outlet) ?? outlet] };
        return this;
    }

    public RigBuilder Lead(string id, LeadType type, int? plugs = null, int? count = null)
    {
        _leads.Add(new Lead { Id = id, Type = type, Plugs = plugs, Count = count });
        return this;
    }

    public RigBuilder Feed(string from, params string[] to) => Feed(from, lead: null, at: null, Joint.None, to);

    public RigBuilder FeedAt(string from, decimal volts, params string[] to) => Feed(from, lead: null, volts, Joint.None, to);

    public RigBuilder FeedOver(string lead, string from, params string[] to) => Feed(from, lead, at: null, Joint.None, to);

    /// <summary>A feed over a daisy chain that is long enough.</summary>
    public RigBuilder Chain(string from, params string[] to) =>
        Lead($"chain {_leads.Count + 1}", LeadType.DaisyChain, to.Length).FeedOver(_leads[^1].Id, from, to);

    /// <summary>A feed from outlets joined in series ("brick/1 brick/2") over a lead that joins them.</summary>
    public RigBuilder Series(string from, params string[] to) =>
        Lead($"series {_leads.Count + 1}", LeadType.Series, to.Length).Feed(from, _leads[^1].Id, at: null, Joint.Series, to);

    /// <summary>A feed from outlets joined in parallel ("brick/1 brick/2") over a lead that joins them.</summary>
    public RigBuilder Parallel(string from, params string[] to) =>
        Lead($"parallel {_leads.Count + 1}", LeadType.Parallel, to.Length).Feed(from, _leads[^1].Id, at: null, Joint.Parallel, to);

    public RigBuilder Feed(string from, string? lead, decimal? at, Joint joined, params string[] to)
    {
        _feeds.Add(new Feed
        {
            From = [.. from.Split(' ').Select(name => new OutletRef(name.Split('/')[0], name.Split('/')[1]))],
            Joined = joined,
            At = at is { } volts ? [new Volts(volts)] : [],
            Lead = lead,
            To = [.. to],
        });
        return this;
    }

    public Rig Build(Func<Rig, Rig>? change = null)
    {
        var rig = new Rig
        {
            Name = "Pier Theatre",
            Mains = new RigMains(new Volts(230), new Frequency(50)),
            Loads = [.. _loads],
            Supplies = [.. _supplies],
            Leads = [.. _leads],
            Wired = (ValueList<Feed>?)[.. _feeds],
            Signal = ["amp"],
        };
        return change?.Invoke(rig) ?? rig;
    }

    public CheckResult Check(Func<Rig, Rig>? change = null) => NameplateCheck.Of(Build(change));
}
