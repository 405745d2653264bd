using System.Collections.Immutable;
using Loadmark.Core.Collections;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Ratings;

/// <summary>Builds a <see cref="WiredRig"/>; an instance serves once.</summary>
internal sealed class WiredRigBuilder(Rig rig, IReadOnlySet<string>? apart = null)
{
    private readonly Dictionary<string, WiredLoad> _loads = new(rig.Loads.Count, StringComparer.Ordinal);
    private readonly Dictionary<OutletRef, WiredOutlet> _outlets = [];
    private readonly Dictionary<string, Lead> _leads = new(rig.Leads.Count, StringComparer.Ordinal);

    public WiredRig Build()
    {
        var supplies = new List<SupplyRating>(rig.Supplies.Count);
        var outlets = new List<WiredOutlet>();
        foreach (var supply in rig.Supplies)
        {
            var supplyRating = SupplyRating.Of(supply);
            supplies.Add(supplyRating);
            foreach (var outlet in supply.Outlets)
            {
                var wired = new WiredOutlet(OutletRating.Of(supply, outlet), supplyRating, outlets.Count);
                if (!_outlets.TryAdd(wired.Rating.Reference, wired))
                    throw new InvalidRigException($"The outlet {wired.Name} is listed twice.");
                outlets.Add(wired);
            }
        }

        var loads = new List<WiredLoad>(rig.Loads.Count);
        var inputs = rig.Supplies.Items.Where(static supply => supply.Label?.Input is not null).Select(static supply => supply.Id)
            .ToHashSet(StringComparer.Ordinal);
        foreach (var load in rig.EveryLoad)
        {
            var wired = new WiredLoad(LoadRating.Of(load), loads.Count, inputs.Contains(load.Id));
            if (!_loads.TryAdd(load.Id, wired))
                throw new InvalidRigException($"The load {load.Id} is listed twice.");
            loads.Add(wired);
        }

        foreach (var lead in rig.Leads)
        {
            if (!_leads.TryAdd(lead.Id, lead))
                throw new InvalidRigException($"The lead {lead.Id} is listed twice.");
        }

        var feeds = new List<WiredFeed>();
        foreach (var feed in rig.Wired ?? [])
            feeds.Add(Wire(feed, feeds.Count));

        foreach (var load in loads)
        {
            if (load.Feeds is [{ Volts: { } fed }])
                load.RateAt(fed);
        }

        foreach (var feed in feeds)
            Share(feed);

        return new WiredRig(rig, [.. supplies], [.. outlets], [.. loads], [.. feeds], [.. JoinReturns(outlets, feeds)]);
    }

    private WiredFeed Wire(Feed feed, int index)
    {
        Require(feed.From.Count > 0 && feed.To.Count > 0, "A feed has at least one outlet and one load.");
        Require(feed.From.Count == 1 == (feed.Joined == Joint.None), "A feed joins its outlets exactly when it has several.");

        var outlets = ImmutableArray.CreateBuilder<WiredOutlet>(feed.From.Count);
        foreach (var reference in feed.From)
            outlets.Add(_outlets.TryGetValue(reference, out var outlet) ? outlet : throw Missing($"outlet {reference}"));

        var loads = ImmutableArray.CreateBuilder<WiredLoad>(feed.To.Count);
        foreach (var id in feed.To)
            loads.Add(_loads.TryGetValue(id, out var load) ? load : throw Missing($"load {id}"));

        Lead? lead = null;
        if (feed.Lead is { } name && !_leads.TryGetValue(name, out lead))
            throw Missing($"lead {name}");

        var wired = new WiredFeed(feed, index, outlets.MoveToImmutable(), lead, loads.MoveToImmutable());
        for (var position = 0; position < wired.Outlets.Length; position++)
        {
            Set(wired.Outlets[position], feed.SettingOf(position), wired.Loads, feed.Joined);
            wired.Outlets[position].Add(wired);
        }

        foreach (var load in wired.Loads)
            load.Add(wired);
        return wired;
    }

    /// <summary>
    /// Sets an outlet as the wiring says. Where it does not say and there is a choice, the first mode that suits all
    /// loads and bears them stands in, as an assumption: it is what a technician would set, and a rule tells them to look.
    /// </summary>
    private static void Set(WiredOutlet outlet, Volts? setting, ImmutableArray<WiredLoad> loads, Joint joint)
    {
        if (outlet.Feeds.Count > 0)
            return;

        var modes = outlet.Rating.Modes;
        if (setting is { } volts)
        {
            if (!outlet.Rating.CanBeSetTo(volts))
                throw new InvalidRigException($"{outlet.Name} has no setting of {volts}.");
            outlet.Select(outlet.Rating.ModeAt(volts) ?? modes.First(mode => mode.Volts is null), volts, isStated: true);
            return;
        }

        if (modes is [{ Volts: null } or { Volts.IsSingle: true }])
            return;

        var best = (Mode: modes[0], Volts: modes[0].Volts?.Low, Score: 0);
        foreach (var mode in modes)
        {
            if (mode.Volts is not { } range || joint == Joint.Series)
                continue;

            var choice = VoltageChoice.Of(range, loads);
            var score = !choice.IsUsable ? 0 : Bears(mode.LimitAt(choice.Volts), loads) ? 2 : 1;
            if (score > best.Score)
                best = (mode, choice.Volts, score);
        }

        outlet.Select(best.Mode, best.Volts, isStated: false);
    }

    private static bool Bears(Figure<Amps>? limit, ImmutableArray<WiredLoad> loads)
    {
        if (limit is not { } most)
            return true;

        var sum = Quantity<Ampere>.Zero;
        foreach (var load in loads)
            sum += load.Rating.Starting?.Value ?? Quantity<Ampere>.Zero;
        return sum <= most.Value;
    }

    /// <summary>
    /// Lays a feed's draws on its outlets, by the share that each carries.
    /// </summary>
    private static void Share(WiredFeed feed)
    {
        var run = Quantity<Ampere>.Zero;
        var start = Quantity<Ampere>.Zero;
        var known = true;
        foreach (var load in feed.Loads)
        {
            known &= load.Rating.Running is not null;
            run += load.Rating.Running?.Value ?? Quantity<Ampere>.Zero;
            start += load.Rating.Starting?.Value ?? Quantity<Ampere>.Zero;
        }

        foreach (var outlet in feed.Outlets)
        {
            var share = feed.ShareOf(outlet);
            outlet.Take(run * share, start * share, known);
        }
    }

    /// <summary>Loads share a return when their outlets do, or when a lead joins the returns of several outlets.</summary>
    private List<ReturnGroup> JoinReturns(List<WiredOutlet> outlets, List<WiredFeed> feeds)
    {
        var groups = new Dictionary<string, ReturnGroup>(StringComparer.Ordinal);
        var returns = new List<ReturnGroup>();
        var joined = JoinedNames(outlets, feeds);
        foreach (var feed in feeds)
        {
            foreach (var outlet in feed.Outlets)
            {
                var name = joined.Find(outlet.Rating.Return);
                if (!groups.TryGetValue(name, out var group))
                {
                    groups.Add(name, group = new ReturnGroup());
                    returns.Add(group);
                }

                group.AddName(outlet.Rating.Isolated.Value ? outlet.Name : outlet.Rating.Supply.Id);
                foreach (var load in feed.Loads)
                {
                    // A supply that is fed by another joins returns and makes no sound of its own.
                    if (!load.IsFedSupply)
                        group.Add(load);
                }
            }
        }

        var empty = new ReturnGroup();
        foreach (var outlet in outlets)
            outlet.ReturnGroup = groups.GetValueOrDefault(joined.Find(outlet.Rating.Return), empty);
        return returns;
    }

    private UnionFind<string> JoinedNames(List<WiredOutlet> outlets, List<WiredFeed> feeds)
    {
        var joined = new UnionFind<string>();
        foreach (var feed in feeds)
        {
            for (var position = 1; position < feed.Outlets.Length; position++)
                joined.Join(feed.Outlets[0].Rating.Return, feed.Outlets[position].Rating.Return);
        }

        // A supply that is fed by another has the returns of its outlets joined with its input, but for isolated ones.
        foreach (var outlet in outlets)
        {
            if (outlet.Rating.Supply.Label?.Input is null || outlet.Rating.Isolated.Value
                || apart?.Contains(outlet.Rating.Supply.Id) is true)
                continue;
            foreach (var feed in _loads[outlet.Rating.Supply.Id].Feeds)
                joined.Join(feed.Outlets[0].Rating.Return, outlet.Rating.Return);
        }

        return joined;
    }

    private static InvalidRigException Missing(string what) =>
        new($"The rig refers to the {what}, which it does not have.");

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
            throw new InvalidRigException(otherwise);
    }
}
