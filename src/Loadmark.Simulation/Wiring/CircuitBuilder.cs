using System.Collections.Immutable;
using Loadmark.Circuits.Devices;
using Loadmark.Circuits.Networks;
using Loadmark.Core.Checks;
using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>Builds the circuit of a rig; an instance serves once.</summary>
internal sealed class CircuitBuilder(WiredRig rig)
{
    /// <summary>What stands at the plug of a load that draws nothing, Ω: a meter, so that its voltage is defined.</summary>
    private const double OpenOhms = 1e9;

    private readonly AssumptionList _assumptions = new();
    private readonly List<Untold> _untold = [];
    private readonly List<Device> _devices = [];
    private readonly Dictionary<WiredOutlet, LaidOutlet> _outlets = [];
    private readonly List<LaidLead> _parts = [];
    private readonly List<(int Device, double Value, bool IsSource)> _assumed = [];
    private readonly Dictionary<WiredLoad, LaidLoad> _loads = [];
    private ReturnNodes? _returns;

    /// <summary>Lays everything out without making it ready to be solved. Returns the outlets that feed something.</summary>
    public IReadOnlyCollection<LaidOutlet> Lay()
    {
        if (_returns is null)
        {
            var feeds = rig.Feeds.Items.Where(CanCompute).ToList();
            _returns = new ReturnNodes(feeds);
            foreach (var feed in feeds)
                Lay(feed);
        }

        return _outlets.Values;
    }

    /// <summary>Makes the circuit ready.</summary>
    public RigCircuit Build()
    {
        Lay();
        var parts = new CircuitParts(_devices);
        ImmutableArray<LoadBranch> loads = [.. rig.Loads.Items.Select(load => Finish(load, parts))];
        ImmutableArray<OutletBranch> outlets = [.. rig.Outlets.Items.Where(_outlets.ContainsKey).Select(outlet => Branch(outlet, parts))];
        return new RigCircuit(
            rig,
            new Netlist(_devices),
            Members(parts, loads, outlets),
            loads,
            outlets,
            [.. _parts.Select(part => Part(part, parts))],
            _assumptions.ToArray(),
            [.. _untold],
            [.. _assumed.Select(figure => new AssumedFigure(
                parts[figure.Device].Part,
                parts.Slot(figure.Device, figure.IsSource ? DeviceParameter.SourceOhms : DeviceParameter.Farads),
                figure.Value,
                figure.IsSource))]);
    }

    /// <summary>Who is in which part.</summary>
    private ImmutableArray<CircuitPart> Members(CircuitParts parts, ImmutableArray<LoadBranch> loads, ImmutableArray<OutletBranch> outlets)
    {
        var ofLoads = parts.Networks.Select(static _ => new List<int>()).ToArray();
        var ofOutlets = parts.Networks.Select(static _ => new List<int>()).ToArray();
        for (var place = 0; place < outlets.Length; place++)
            ofOutlets[outlets[place].Device.Part].Add(place);
        for (var place = 0; place < loads.Length; place++)
        {
            if (_loads.TryGetValue(loads[place].Load, out var plugged))
                ofLoads[parts[plugged.Device].Part].Add(place);
        }

        return [.. parts.Networks.Select((network, part) => new CircuitPart(network, [.. ofLoads[part]], [.. ofOutlets[part]]))];
    }

    /// <summary>Whether a feed's voltage and kind of current are known; says so where not.</summary>
    private bool CanCompute(WiredFeed feed)
    {
        if (feed.Volts is null || feed.Outlets.Any(static outlet => outlet.Volts is null))
        {
            Tell(feed, $"The voltage of {feed.OutletNames} is not known, so what its loads get cannot be computed.");
            return false;
        }

        if (feed.Form.IsKnown && feed.Outlets.Any(outlet => outlet.Rating.Form.Value != feed.Form.Value))
        {
            Tell(feed, $"{feed.OutletNames} are of direct and of alternating current, joined: what comes of that cannot be computed.");
            return false;
        }

        return true;
    }

    private void Lay(WiredFeed feed)
    {
        foreach (var outlet in feed.Outlets)
        {
            if (!_outlets.ContainsKey(outlet))
                Place(outlet);
        }

        if (feed.Form.Value == SupplyForm.Alternating)
            _assumptions.Add(
                "alternating current",
                "computed with effective values, in phase with its voltage",
                feed.OutletNames,
                "exact for heaters and resistors, a guide for loads with rectifiers");
        if (feed.Joined == Joint.Parallel)
            _assumptions.Add(
                "sharing of outlets in parallel",
                "by printed voltage and resistance; millivolts shift it, from nothing to all",
                feed.OutletNames,
                "Ohm's law: a few millivolts over a few milliohms are amps");
        if (feed.Joined == Joint.Series)
            _assumptions.Add(
                "series lead", $"the load's 0 V comes from {feed.Outlets[0].Name}", feed.OutletNames, "the wiring does not say");

        var figures = new LeadModel(feed, _assumptions);
        var lead = new LeadBuilder(feed, figures, outlet => _outlets[outlet].Terminals, _devices);
        var jacks = lead.Lay();
        foreach (var part in lead.Parts)
        {
            _parts.Add(new LaidLead(feed, figures, part));
            _outlets[feed.Outlets[0]].LeadOhms += part.Conductors * Math.Max(CircuitDefaults.LeastOhms, part.ContactOhms + part.WireOhms);
        }

        foreach (var outlet in feed.Outlets)
            _outlets[outlet].IsJoined |= feed.Outlets.Length > 1;
        for (var position = 0; position < jacks.Length; position++)
            Plug(feed.Loads[position], feed, jacks[position]);
    }

    private void Place(WiredOutlet outlet)
    {
        var (plus, minus) = ($"{outlet.Name} +", _returns!.Of(outlet));
        var figures = new OutletModel(outlet, outlet.Volts!.Value, _assumptions);
        if (outlet.Limit is null)
            _untold.Add(new Untold(default, [outlet.Name], $"The limit of {outlet.Name} is not known: computed as if it had none."));
        var hasFuse = figures.Overload == OverloadWay.Fuse;
        _devices.Add(figures.Device($"outlet {outlet.Name}", hasFuse ? $"{outlet.Name} before its fuse" : plus, minus));
        var device = _devices.Count - 1;
        if (figures.SourceIsAssumed)
            _assumed.Add((device, figures.SourceOhms, true));
        if (hasFuse)
            _devices.Add(figures.Fuse($"fuse of {outlet.Name}", $"{outlet.Name} before its fuse", plus));
        _outlets.Add(outlet, new LaidOutlet(outlet, figures, new Terminals(plus, minus), device, hasFuse ? device + 1 : null));
    }

    /// <summary>Plugs a load in, if it is not plugged in already and can be computed.</summary>
    private void Plug(WiredLoad load, WiredFeed feed, Contacts jack)
    {
        if (_loads.ContainsKey(load))
        {
            _untold.Add(new Untold(default, [load.Id], $"{load.Id} is fed more than once: computed on its first feed only."));
            return;
        }

        var terminals = jack.As(PolarityOf(load, feed));
        if (WhyItDrawsNothing(load, feed) is { } why)
        {
            _devices.Add(new Resistor($"{LoadModel.NameOf(load)}, which draws nothing", terminals.Plus, terminals.Minus, OpenOhms));
            _loads.Add(
                load, new LaidLoad(new LoadBranch { Load = load, Feed = feed, Jack = terminals, Because = why }, _devices.Count - 1));
            _untold.Add(new Untold(default, [load.Id, feed.Outlets[0].Name], why));
            return;
        }

        var branch = LoadModel.Branch(load, feed, feed.Volts!.Value, _assumptions);
        var device = _devices.Count;
        _devices.AddRange(LoadModel.Devices(branch, terminals, _assumptions));
        if (load.Rating.Load.InputCapacitance is null)
            _assumed.Add((_devices.Count - 1, LoadModel.FaradsOf(load.Rating), false));
        _loads.Add(load, new LaidLoad(branch with { Jack = terminals }, device));
        _outlets[feed.Outlets[0]].Loads.Add(branch);
    }

    /// <summary>
    /// Which way round the load takes its jack; alternating current has no way round, and what is not known is computed as if it suited.
    /// </summary>
    /// <summary>
    /// What takes either kind of current rectifies for itself: without a polarity printed it takes direct current either way round.
    /// </summary>
    private static bool TakesEitherWayRound(LoadRating load) => load.TakesEitherForm && load.Polarity.IsAssumed;

    private static Polarity PolarityOf(WiredLoad load, WiredFeed feed) =>
        feed.Form.Value == SupplyForm.Alternating
        || !load.Rating.Polarity.IsKnown
        || TakesEitherWayRound(load.Rating)
        || !feed.Outlets[0].Rating.Polarity.IsKnown
            ? feed.PolarityAtPlug
            : load.Rating.Polarity.Value;

    private static string? WhyItDrawsNothing(WiredLoad load, WiredFeed feed)
    {
        var rating = load.Rating;
        var fit = Suitability.Of(FeedPoint.Of(feed), rating);
        if (fit.Form == Fit.No)
            return $"{load.Id} takes {Word(rating.Form.Value)} and gets {Word(feed.Form.Value)}: computed as drawing nothing.";
        if (feed.Form.Value == SupplyForm.Direct && IsReversed(feed, fit.Polarity == Fit.No))
            return $"{load.Id} gets its voltage the wrong way round: computed as drawing nothing.";
        return rating.Running is null ? $"What {load.Id} draws is not known: the circuit is computed without it." : null;
    }

    /// <summary>Whether plus and minus are exchanged at a load's jack; outlets in series may cancel or outweigh one another.</summary>
    private static bool IsReversed(WiredFeed feed, bool isReversed)
    {
        if (feed.Joined != Joint.Series)
            return isReversed;
        var first = feed.Outlets[0].Rating.Polarity.Value;
        var sum = feed.Outlets.Sum(outlet => (outlet.Volts?.Value ?? 0) * (outlet.Rating.Polarity.Value == first ? 1 : -1));
        return sum < 0 ? !isReversed : isReversed;
    }

    private static LoadBranch Dark(WiredLoad load) => new()
    {
        Load = load,
        Because = load.Feeds.Count == 0 ? $"{load.Id} is not fed." : $"What {load.Id} gets cannot be computed.",
    };

    private LoadBranch Finish(WiredLoad load, CircuitParts parts)
    {
        if (!_loads.TryGetValue(load, out var plugged))
            return Dark(load);
        var (branch, device) = plugged;
        if (branch.Because is not null)
            return branch;
        return branch with
        {
            Device = parts[device],
            RunSlot = parts.Slot(device, branch.IsHeater ? DeviceParameter.HotOhms : DeviceParameter.Draw),
            StartSlot = branch.IsHeater
                ? parts.Slot(device, DeviceParameter.ColdOhms)
                : branch.StartSeconds > 0 ? parts.Slot(device, DeviceParameter.BootDraw) : null,
        };
    }

    private OutletBranch Branch(WiredOutlet outlet, CircuitParts parts)
    {
        var (_, figures, terminals, device, fuse) = _outlets[outlet];
        return new OutletBranch
        {
            Outlet = outlet,
            Device = parts[device],
            Terminals = terminals,
            Volts = figures.Volts,
            LimitAmps = figures.LimitAmps,
            Overload = figures.Overload,
            VoltsSlot = parts.Slot(device, DeviceParameter.Volts),
            LimitSlot = parts.Slot(device, DeviceParameter.LimitAmps),
            Fuse = fuse is { } place ? parts[place] : null,
            Surge = outlet.Rating.Outlet.Surge is { } surge
                ? ((double)surge.Current.Value, surge.Duration is { } lasts ? (double)lasts.Value : double.PositiveInfinity)
                : null,
        };
    }

    private static LeadPart Part(LaidLead lead, CircuitParts parts)
    {
        var (feed, figures, part) = lead;
        var (devices, slots) = (new DevicePlace[part.Conductors], new ParameterSlot[part.Conductors]);
        for (var conductor = 0; conductor < part.Conductors; conductor++)
            (devices[conductor], slots[conductor]) = (
                parts[part.Device + conductor], parts.Slot(part.Device + conductor, DeviceParameter.Ohms));
        return new LeadPart
        {
            Feed = feed,
            Name = part.Name.Length == 0 ? figures.Name : $"{figures.Name}, {part.Name}",
            Devices = [.. devices],
            Slots = [.. slots],
            ContactOhms = part.ContactOhms,
            WireOhms = part.WireOhms,
            Metres = figures.SquareMetres is null ? null : part.Metres,
            SquareMetres = figures.SquareMetres,
            FirstLoad = part.First,
            EndLoad = part.End,
        };
    }

    private void Tell(WiredFeed feed, string because) => _untold.Add(new Untold(default, Phrases.Subjects(feed), because));

    private static string Word(SupplyForm form) => form == SupplyForm.Direct ? "direct current" : "alternating current";
}
